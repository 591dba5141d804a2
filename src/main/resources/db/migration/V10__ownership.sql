-- To which account a kept thing belongs (null: common, as everything was before there were accounts), and the key of the link by
-- which it is shared, while it is. Accounts are never deleted, so no key refers to them.
alter table event add column owner uuid, add column share_key text unique;
alter table cutting_plan add column owner uuid, add column share_key text unique;
alter table errand add column owner uuid, add column share_key text unique;
alter table cloth add column owner uuid, add column share_key text unique;

-- For lists of what is one's own and what is common.
create index event_by_owner on event (owner, changed_at desc, id);
create index cutting_plan_by_owner on cutting_plan (owner, made_at, id);
create index errand_by_owner on errand (owner, created_at desc, id);
create index cloth_by_owner on cloth (owner) where owner is not null;

-- A plan may be read by whoever may read a sheet that is made from it.
create index errand_by_plan on errand ((body ->> 'planId'));

-- So that a search finds and counts only what the asker may see. All cloths are common so far, so the index holds as it is.
alter table cloth_index add column owner uuid;
create index cloth_index_by_owner on cloth_index (owner) where owner is not null;
