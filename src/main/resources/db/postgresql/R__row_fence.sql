-- The second fence: a household's entries, pictures and changes among its people are there only for a transaction that has named it
-- (store/RowFence.java). A step that changes rows of several households has to name each in turn, also as the owner of the table.
alter table journal_entry enable row level security;
alter table journal_entry force row level security;
drop policy if exists own_household on journal_entry;
create policy own_household on journal_entry
  using (household_id = current_setting('provender.household', true))
  with check (household_id = current_setting('provender.household', true));

alter table photo enable row level security;
alter table photo force row level security;
drop policy if exists own_household on photo;
create policy own_household on photo
  using (household_id = current_setting('provender.household', true))
  with check (household_id = current_setting('provender.household', true));

alter table household_change enable row level security;
alter table household_change force row level security;
drop policy if exists own_household on household_change;
create policy own_household on household_change
  using (household_id = current_setting('provender.household', true))
  with check (household_id = current_setting('provender.household', true));
