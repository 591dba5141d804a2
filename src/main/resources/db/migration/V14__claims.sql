-- Who claimed what. claim tells one time of working on a call from the others, as it does for jobs: whoever commits under it looks first
-- whether it still holds. claimed_by is a number on which the instance that works holds a lock of its session (an advisory one) for as
-- long as it lives; where nobody holds it, the claim need not be waited for. attempts counts how often a call was begun: where more than
-- once, something may have been made before.
alter table keyed_call add column claim uuid, add column claimed_by bigint, add column attempts integer not null default 1;
create unique index keyed_call_by_claim on keyed_call (claim) where claim is not null;
alter table job add column claimed_by bigint;
