-- The second fence: entries of a household are there only for a transaction that has named it (store/RowFence.java). A step that
-- changes entries of several households has to name each in turn, also as the owner of the table.
alter table journal_entry enable row level security;
alter table journal_entry force row level security;
drop policy if exists own_household on journal_entry;
create policy own_household on journal_entry
  using (household_id = current_setting('provender.household', true))
  with check (household_id = current_setting('provender.household', true));
