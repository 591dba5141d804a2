-- Who may log in. The name is unique whatever its case. The stamp rises when all that is logged in under the account has to log in anew.
create table account (
    id uuid primary key,
    name text not null,
    name_key text not null unique,
    roles text not null,
    disabled boolean not null default false,
    password_hash text,
    one_time boolean not null default false,
    stamp bigint not null default 0,
    issuer text,
    subject text,
    made_at timestamptz not null,
    version bigint not null default 0,
    unique (issuer, subject)
);

-- What programs show in place of a password. Of the token itself only its SHA-256 is kept.
create table access_token (
    id uuid primary key,
    account_id uuid not null references account on delete cascade,
    name text not null,
    secret_sha256 bytea not null unique,
    made_at timestamptz not null,
    expires_at timestamptz not null,
    last_used_at timestamptz
);
create index access_token_of_account on access_token (account_id, made_at desc);

-- Wrong passwords in a row, by the SHA-256 of the name that was typed, whether there is such an account or not: that way a wait does not
-- tell which names there are.
create table login_wait (
    name_digest text primary key,
    wrong integer not null,
    last_at timestamptz not null,
    wait_until timestamptz
);
create index login_wait_by_time on login_wait (last_at);

-- What was changed by whom, written with the change. The name is the one that the account had then.
create table audit_entry (
    id bigint generated always as identity primary key,
    at timestamptz not null,
    account_id uuid,
    account_name text,
    action text not null,
    thing_kind text not null,
    thing_id text not null,
    what text not null
);
create index audit_entry_by_time on audit_entry (at);

-- Sessions of pages, as Spring Session wants them.
create table spring_session (
    primary_id char(36) not null constraint spring_session_pk primary key,
    session_id char(36) not null,
    creation_time bigint not null,
    last_access_time bigint not null,
    max_inactive_interval int not null,
    expiry_time bigint not null,
    principal_name varchar(100)
);
create unique index spring_session_ix1 on spring_session (session_id);
create index spring_session_ix2 on spring_session (expiry_time);
create index spring_session_ix3 on spring_session (principal_name);
create table spring_session_attributes (
    session_primary_id char(36) not null references spring_session (primary_id) on delete cascade,
    attribute_name varchar(200) not null,
    attribute_bytes bytea not null,
    constraint spring_session_attributes_pk primary key (session_primary_id, attribute_name)
);
