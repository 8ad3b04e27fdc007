-- A passkey's public half: the phone keeps the other one. The credential id has at most 1023 bytes (Web Authentication), here in Base64.
create table passkey (
  keeper_id     varchar(64)   not null references keeper (id),
  id            varchar(36)   not null,
  credential_id varchar(1400) not null unique,
  place         varchar(253)  not null,
  public_key    text          not null,
  may_be_copied boolean       not null,
  uses          bigint        not null,
  name          varchar(60)   not null,
  made_at       timestamp with time zone not null,
  used_at       timestamp with time zone,
  primary key (keeper_id, id)
);
