// SPDX-License-Identifier: GPL-3.0-or-later
// Nanoseconds that PsychroLib takes for relative humidity and dew point of a pair, the same kind of year of air as
// in bench_psychrometry.cpp (its own generator: Park and Miller's). Prints one number, the median of 15 rounds.
'use strict';
const path = require('path');

const folder = process.env.WICKBOOK_PSYCHROLIB;
const lib = require(folder ? path.join(folder, 'node_modules', 'psychrolib') : 'psychrolib');
lib.SetUnitSystem(lib.SI);

let seed = 1;
function random() {
  seed = (seed * 48271) % 2147483647;
  return seed / 2147483647;
}

const kPairs = 1024;
const pairs = [];
while (pairs.length < kPairs) {
  const season = -Math.cos((2 * Math.PI * pairs.length) / kPairs);
  const dry = 9 + 12 * season - 12 + 24 * random();
  const wet = lib.GetTWetBulbFromRelHum(dry, 0.15 + 0.85 * random(), 101325);
  pairs.push([dry, wet]);
}

let kept = 0;
function round() {
  const start = process.hrtime.bigint();
  for (const [dry, wet] of pairs) {
    const vapour = lib.GetVapPresFromHumRatio(lib.GetHumRatioFromTWetBulb(dry, wet, 101325), 101325);
    kept += vapour + lib.GetRelHumFromVapPres(dry, vapour) + lib.GetTDewPointFromVapPres(dry, vapour);
  }
  return Number(process.hrtime.bigint() - start) / kPairs;
}

for (let i = 0; i < 20; ++i) {
  round(); // until it is compiled
}
const times = Array.from({ length: 15 }, round).sort((a, b) => a - b);
if (!(kept > 0)) {
  throw new Error('nothing was derived');
}
console.log(times[7].toFixed(2));
