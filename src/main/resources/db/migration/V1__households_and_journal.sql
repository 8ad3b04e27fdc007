-- Household id leads every key of what a household owns; no identity columns and no sequences, so that the same SQL suits
-- H2, PostgreSQL and a distributed engine that speaks PostgreSQL.
create table household (
  id   varchar(64)  not null primary key,
  name varchar(200) not null
);

create table keeper (
  id            varchar(64)  not null primary key,
  name          varchar(200) not null unique,
  password_hash varchar(200) not null
);

create table membership (
  household_id varchar(64) not null references household (id),
  keeper_id    varchar(64) not null references keeper (id),
  role         varchar(16) not null check (role in ('KEEPER', 'STEWARD', 'GUEST')),
  primary key (household_id, keeper_id)
);
create index membership_of_keeper on membership (keeper_id);

create table keeper_session (
  token_hash varchar(64) not null primary key,
  keeper_id  varchar(64) not null references keeper (id),
  expires_at timestamp with time zone not null
);

-- The counter row of a tank: whoever writes locks it, so the order of seq is the order of commits.
create table tank (
  household_id varchar(64)  not null references household (id),
  id           varchar(64)  not null,
  name         varchar(200) not null,
  zone         varchar(64)  not null,
  epoch        varchar(36)  not null,
  head         bigint       not null,
  primary key (household_id, id)
);

create table journal_entry (
  household_id varchar(64) not null,
  tank_id      varchar(64) not null,
  seq          bigint      not null,
  id           varchar(36) not null,
  device       varchar(36) not null,
  device_seq   bigint      not null,
  kind         varchar(40) not null,
  happened_at  varchar(40) not null,
  received_at  timestamp with time zone not null,
  written      text        not null,
  primary key (household_id, tank_id, seq),
  constraint entry_once unique (household_id, tank_id, id),
  foreign key (household_id, tank_id) references tank (household_id, id)
);
