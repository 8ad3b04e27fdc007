-- Who left stays known by name, since their entries stay; what changed among the people is kept in order.
alter table membership add column ended_at timestamp with time zone;

create table household_change (
  household_id varchar(64) not null references household (id),
  id           varchar(36) not null,
  happened_at  timestamp with time zone not null,
  by_id        varchar(64) not null references keeper (id),
  about_id     varchar(64) references keeper (id),
  what         varchar(24) not null,
  role         varchar(16) check (role in ('KEEPER', 'STEWARD', 'GUEST')),
  primary key (household_id, id)
);

-- A signed-in phone as its keeper knows it: an id that opens nothing, a word for what it is, and when it last asked.
alter table keeper_session add column id varchar(36);
update keeper_session set id = substring(token_hash, 1, 36);
alter table keeper_session alter column id set not null;
alter table keeper_session add column device varchar(60) default '' not null;
alter table keeper_session add column opened_at timestamp with time zone;
update keeper_session set opened_at = expires_at - interval '180' day;
alter table keeper_session alter column opened_at set not null;
alter table keeper_session add column last_used_at timestamp with time zone;
create index session_of_keeper on keeper_session (keeper_id, id);

-- A link with which one person chooses a new password, once.
create table password_reset (
  code_hash  varchar(64) not null primary key,
  keeper_id  varchar(64) not null references keeper (id),
  expires_at timestamp with time zone not null
);
create index reset_of_keeper on password_reset (keeper_id);
