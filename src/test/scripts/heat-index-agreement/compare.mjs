// The heat index of campcloth.comfort.model.HeatIndex beside that of the npm library jsthermalcomfort 0.0.2, which is the
// regression of Rothfusz alone. By hand, from the root of the project, nothing is kept in it:
//
//   mvn -q test-compile
//   java -cp target/classes:target/test-classes campcloth.comfort.model.HeatIndexCases > /tmp/heat-index.csv
//   npm install --prefix /tmp/heat-index jsthermalcomfort@0.0.2
//   node src/test/scripts/heat-index-agreement/compare.mjs /tmp/heat-index.csv /tmp/heat-index
//
// Ends with status 1 where the two differ in a case in which the regression stands alone.
//
// Its last result (version 0.0.2): 1691 cases of the regression alone, at most 4.7e-12 K apart, 0.05 K from the library's value
// rounded to tenths; 309 cases under the Weather Service's simple formula or adjustments, which the library lacks, up to 6 K apart.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join, resolve } from "node:path";

const [csv, folder] = process.argv.slice(2);
const { heatIndex } = createRequire(join(resolve(folder), "x.js"))("jsthermalcomfort");
const [, ...lines] = readFileSync(csv, "utf8").trim().split("\n");

const alone = { cases: 0, fahrenheit: 0, celsius: 0, tenths: 0 };
const ruled = { cases: 0, most: 0 };
for (const line of lines) {
  const [air, humidity, index, regressionAlone] = line.split(",");
  const [t, r, ours] = [air, humidity, index].map(Number);
  const exact = (heatIndex(t * 1.8 + 32, r, { units: "IP", round: false }) - 32) / 1.8;
  const off = Math.abs(ours - exact);
  if (regressionAlone === "true") {
    alone.cases++;
    alone.fahrenheit = Math.max(alone.fahrenheit, off);
    alone.celsius = Math.max(alone.celsius, Math.abs(ours - heatIndex(t, r, { round: false })));
    alone.tenths = Math.max(alone.tenths, Math.abs(ours - heatIndex(t, r)));
  } else {
    ruled.cases++;
    ruled.most = Math.max(ruled.most, off);
  }
}

console.log(`regression alone: ${alone.cases} cases, they differ by at most ${alone.fahrenheit.toExponential(1)} K`);
console.log(`  by its coefficients for Celsius ${alone.celsius.toFixed(4)} K, rounded by it to tenths ${alone.tenths.toFixed(4)} K`);
console.log(`under a rule of the Weather Service that it lacks: ${ruled.cases} cases, at most ${ruled.most.toFixed(2)} K apart`);
process.exit(alone.cases >= 1000 && alone.fahrenheit < 1e-9 && alone.tenths < 0.1 ? 0 : 1);
