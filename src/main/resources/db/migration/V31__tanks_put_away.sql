-- A tank that was put away is no longer listed or served; its journal stays, and a steward can bring it back.
alter table tank add column put_away_at timestamp with time zone;
