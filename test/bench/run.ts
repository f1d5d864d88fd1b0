/**
 * How fast the calculator is, for a person to read: nothing here passes or fails. All are timed in
 * turn within one run, the best of many, so that ratios hold on a slow or busy machine.
 */
import { inches, mm, planJoint, type JointSpec } from '../../src/core/index.ts';
import { type ClosingOddsInput, closingOdds } from '../../src/core/trial/closingOdds.ts';
import { classicMistakes } from '../../src/core/trial/classicMistakes.ts';
import { drill, soundSetup } from '../../src/core/trial/drill.ts';
import { dryFit } from '../../src/core/trial/dryFit.ts';
import { plainOdds } from './plainOdds.ts';

const rounds = 40;
const trials = 10_000;
const pins = 6;
const sigma = mm(0.1);
const positions = Array.from({ length: pins }, (_, j) => mm(40 + 60 * j));

const board = { thickness: inches(3 / 4), width: inches(11.25), length: inches(24) };
const corner: JointSpec = { kind: 'corner', system: 'in', a: board, b: board };
const sound = drill(soundSetup(planJoint(corner)));
const wrong = classicMistakes.map(({ make }) => drill(make(soundSetup(planJoint(corner)))));

function odds(play: number, mayTurn: boolean): ClosingOddsInput {
  return {
    positions,
    radialPlay: mm(play),
    sigmaAlong: sigma,
    sigmaAcross: sigma,
    length: mm(380),
    flushTolerance: mm(0.1),
    mayTurn,
    trials,
    seed: 1,
  };
}

/** Milliseconds for one call of each, the best of all rounds; they take turns. */
function best(tasks: readonly (() => unknown)[]): readonly number[] {
  const least = tasks.map(() => Infinity);
  for (let round = 0; round < rounds; round++) {
    tasks.forEach((task, k) => {
      const start = performance.now();
      task();
      least[k] = Math.min(least[k] as number, performance.now() - start);
    });
  }
  return least;
}

function milliseconds(time: number | undefined): string {
  return `${(time ?? NaN).toFixed(3)} ms`.padStart(12);
}

const [plan, fit, causes] = best([
  () => planJoint(corner),
  () => dryFit(sound),
  () => wrong.forEach((trial) => dryFit(trial)),
]);
console.log(`planJoint, a corner with its pin chosen ${milliseconds(plan)}`);
console.log(`dryFit, the same, sound                 ${milliseconds(fit)}`);
console.log(
  `dryFit, a classic mistake with causes   ${milliseconds((causes ?? NaN) / wrong.length)}`,
);
console.log(`\nclosingOdds, ${trials} trials of ${pins} pins, against the plain version`);
for (const share of [1, 1.5, 2, 3]) {
  const play = share * sigma;
  const [plain, still, turning] = best([
    () => plainOdds(pins, play, sigma, trials, 0.5),
    () => closingOdds(odds(play, false)),
    () => closingOdds(odds(play, true)),
  ]);
  const percent = (100 * closingOdds(odds(play, false)).probability).toFixed(1);
  console.log(
    `play ${share.toFixed(1)} sigma (${percent.padStart(4)} % close): plain ${milliseconds(plain)},` +
      ` ours ${milliseconds(still)}, ${((plain ?? NaN) / (still ?? NaN)).toFixed(1)} times as fast;` +
      ` turning, flush ${milliseconds(turning)}`,
  );
}
