-- Where a keeper is written to who forgot their password, if they said so; and an address whose owner has not followed the link yet.
alter table keeper add column mail_address varchar(254);

create table unconfirmed_address (
  code_hash  varchar(64) not null primary key,
  keeper_id  varchar(64) not null references keeper (id),
  address    varchar(254) not null,
  expires_at timestamp with time zone not null
);
create index unconfirmed_address_of_keeper on unconfirmed_address (keeper_id);
