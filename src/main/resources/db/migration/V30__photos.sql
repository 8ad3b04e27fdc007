-- Pictures, each under the id of its entry of kind photo; in the database, so that every copy of it has them.
create table photo (
  household_id varchar(64) not null,
  tank_id      varchar(64) not null,
  id           varchar(36) not null,
  received_at  timestamp with time zone not null,
  jpeg         bytea       not null,
  primary key (household_id, tank_id, id),
  foreign key (household_id, tank_id) references tank (household_id, id)
);
