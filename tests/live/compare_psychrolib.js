// SPDX-License-Identifier: GPL-3.0-or-later
// Our numbers against PsychroLib (ASHRAE Handbook Fundamentals: Hyland and Wexler 1983, adiabatic saturation).
// Tolerances: the stated largest errors of both formulas added – water above 0 °C 0.007 + 0.023 %, ice to −50 °C
// 0.05 + 0.033 %. Its wet bulb is the thermodynamic one, not an instrument's: 1 % RH, as for its rows in
// tests/reference/psychrometer_checks.csv.
'use strict';
const { execFileSync } = require('child_process');
const path = require('path');

let lib;
try {
  const folder = process.env.WICKBOOK_PSYCHROLIB;
  lib = require(folder ? path.join(folder, 'node_modules', 'psychrolib') : 'psychrolib');
} catch (problem) {
  console.log('skipped: psychrolib for Node.js is not installed (NODE_PATH or WICKBOOK_PSYCHROLIB can point to it)');
  process.exit(77);
}
lib.SetUnitSystem(lib.SI);

let failures = 0;

function ours(questions) {
  const text = execFileSync(process.argv[2], { input: questions.join('\n') + '\n', encoding: 'utf8' });
  return text.trim().split('\n').map((line) => line.split(' ').map(Number));
}

// points: [question, expected, index of the answer's number]; allowed(expected) is absolute.
function compare(what, points, allowed) {
  const answers = ours(points.map((p) => p.question));
  let worst = 0;
  let worstAt = '';
  points.forEach((p, i) => {
    const got = answers[i][p.index || 0];
    const share = Math.abs(got - p.expected) / allowed(p.expected);
    if (!(share <= 1)) {
      ++failures;
      console.log(`${what}: ${p.question}: ours ${got}, theirs ${p.expected}`);
    }
    if (share > worst) {
      worst = share;
      worstAt = p.question;
    }
  });
  console.log(`${what}: ${points.length} points, largest at ${(100 * worst).toFixed(0)} % of what is allowed (${worstAt})`);
  if (answers.length !== points.length || points.length === 0) {
    ++failures;
  }
}

function range(from, to, step) {
  const values = [];
  for (let i = 0; from + i * step <= to + 1e-9; ++i) {
    values.push(from + i * step);
  }
  return values;
}

const hectopascals = (pascals) => pascals / 100;

compare('saturation over water', range(0.5, 60, 0.5).map((t) => (
  { question: `saturation water ${t}`, expected: hectopascals(lib.GetSatVapPres(t)) })), (e) => 3.1e-4 * e);
compare('saturation over ice', range(-50, 0, 0.5).map((t) => (
  { question: `saturation ice ${t}`, expected: hectopascals(lib.GetSatVapPres(t)) })), (e) => 8.4e-4 * e);

// Its dew point is over ice below 0 °C, and no higher than the dry bulb it is given (60). 3.1e-4 of e is 0.005 K, 8.4e-4 0.009 K, and it stops within 0.001 K.
compare('dew point', range(0.7, 120, 0.9).filter((e) => e > 6.2).map((e) => (
  { question: `dew ${e}`, expected: lib.GetTDewPointFromVapPres(60, e * 100) })), () => 0.008);
compare('frost point', range(0.05, 6.0, 0.05).map((e) => (
  { question: `frost ${e}`, expected: lib.GetTDewPointFromVapPres(60, e * 100) })), () => 0.012);

// Its exponent is 5.2559 where ours is 5.25588.
compare('standard atmosphere', range(-400, 9000, 200).map((h) => (
  { question: `pressure ${h}`, expected: hectopascals(lib.GetStandardAtmPressure(h)) })), (p) => 4e-5 * p);

// Thermodynamic wet bulb beside an aspirated one.
const pairs = [];
for (const t of range(5, 40, 5)) {
  for (const depression of range(0, 10, 1)) {
    for (const p of [850, 950, 1013.25]) {
      const w = t - depression;
      if (w > 0.5) {
        const rh = 100 * lib.GetRelHumFromTWetBulb(t, w, p * 100);
        if (rh > 10) {
          pairs.push({ t, w, p, rh });
        }
      }
    }
  }
}
compare('relative humidity', pairs.map(({ t, w, p, rh }) => (
  { question: `pair aspirated water ${t} ${w} ${p}`, expected: rh })), () => 1.0);

// The same vapour as mixing ratio: 0.62198 beside its 0.621945 (6e-5).
const states = pairs.filter((_, i) => i % 5 === 0);
const answers = ours(states.map(({ t, w, p }) => `pair aspirated water ${t} ${w} ${p}`));
compare('mixing ratio', states.map(({ t, w, p }, i) => (
  { question: `pair aspirated water ${t} ${w} ${p}`, index: 4,
    expected: 1000 * lib.GetHumRatioFromVapPres(answers[i][1] * 100, p * 100) })), (r) => 8e-5 * r);

process.exit(failures ? 1 : 0);
