-- A link that lets one person into a household once. Only a hash of its code is kept.
create table invitation (
  household_id varchar(64) not null references household (id),
  code_hash    varchar(64) not null,
  role         varchar(16) not null check (role in ('KEEPER', 'STEWARD', 'GUEST')),
  expires_at   timestamp with time zone not null,
  primary key (household_id, code_hash)
);
create index invitation_by_code on invitation (code_hash);
