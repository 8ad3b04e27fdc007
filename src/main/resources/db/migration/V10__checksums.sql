-- What each entry and each whole journal adds up to, kept in the transaction that adds an entry. Entries from before have none
-- until the server starts next and reckons it.
alter table journal_entry add column checksum bigint;
alter table tank add column checksum bigint default 0 not null;
create index entry_of_kind on journal_entry (household_id, tank_id, kind, seq);
