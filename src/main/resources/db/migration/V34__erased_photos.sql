-- The picture of a photo that was erased is gone; its row stays, so that a phone that still sends it is told so.
alter table photo alter column jpeg drop not null;
alter table photo add column erased_at timestamp with time zone;
