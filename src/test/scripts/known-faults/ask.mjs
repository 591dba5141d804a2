// Asks the public database of known faults (OSV, https://osv.dev) for every library on the bill of materials. By hand or in a
// scheduled job where the network allows; after a build:
//
//   node src/test/scripts/known-faults/ask.mjs target/classes/META-INF/sbom/application.cdx.json
//
// Ends with 0 where nothing is known against any of them, with 1 where something is, and with 2 where the database could not be asked:
// that is not the same as nothing known. Only names and versions of libraries leave the machine.

import { readFileSync } from "node:fs";

const API = process.env.OSV_API ?? "https://api.osv.dev/v1/querybatch";
const AT_ONCE = 500;

const bill = JSON.parse(readFileSync(process.argv[2], "utf8"));
const purls = bill.components.map((component) => component.purl.replace(/\?.*$/, ""));

async function ask(queries) {
  const answer = await fetch(API, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify({ queries }),
    signal: AbortSignal.timeout(60_000),
  });
  if (!answer.ok) throw new Error(`status ${answer.status}`);
  const { results } = await answer.json();
  if (results?.length !== queries.length) throw new Error("not as many answers as questions");
  return results;
}

const known = new Map();
try {
  let open = purls.map((purl) => ({ package: { purl } }));
  while (open.length > 0) {
    const now = open.splice(0, AT_ONCE);
    const results = await ask(now);
    results.forEach((result, i) => {
      const { purl } = now[i].package;
      for (const fault of result.vulns ?? []) known.set(purl, [...(known.get(purl) ?? []), fault.id]);
      if (result.next_page_token) open.push({ ...now[i], page_token: result.next_page_token });
    });
  }
} catch (failure) {
  console.log(`NOT DONE: the database of known faults could not be asked (${failure.cause?.code ?? failure.message})`);
  process.exit(2);
}

for (const [purl, faults] of known) console.log(`${purl}: ${faults.join(", ")}`);
console.log(`${purls.length} libraries asked for, something is known against ${known.size}`);
process.exit(known.size > 0 ? 1 : 0);
