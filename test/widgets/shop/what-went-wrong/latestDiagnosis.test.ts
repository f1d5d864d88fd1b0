import { describe, expect, it, vi } from 'vitest';
import { type JointSpec, mm } from '../../../../src/core/index.ts';
import type { Diagnosis } from '../../../../src/core/trial/diagnose.ts';
import type { AnsweringWorker } from '../../../../src/widgets/latestAnswer.ts';
import {
  type SeenJoint,
  diagnoseJoint,
} from '../../../../src/widgets/shop/what-went-wrong/diagnoseJoint.ts';
import { LatestDiagnosis } from '../../../../src/widgets/shop/what-went-wrong/latestDiagnosis.ts';

const spec: JointSpec = {
  kind: 'edge',
  system: 'mm',
  a: { thickness: mm(18), width: mm(90), length: mm(600) },
  b: { thickness: mm(18), width: mm(110), length: mm(600) },
};
const joint = (gap: number): SeenJoint => ({
  spec,
  signs: { opening: { start: mm(gap), end: mm(gap) } },
  pins: null,
});

describe('LatestDiagnosis', () => {
  it('sends the worker what a worker can be sent, one joint at a time, and drops what is stale', () => {
    const asked: SeenJoint[] = [];
    const worker: AnsweringWorker<readonly Diagnosis[]> = {
      onmessage: null,
      onerror: null,
      postMessage: (message: SeenJoint) => asked.push(structuredClone(message)),
      terminate: vi.fn(),
    };
    const deliver = vi.fn();
    const latest = new LatestDiagnosis(deliver, () => worker);
    const answer = () =>
      worker.onmessage?.({ data: diagnoseJoint(asked.at(-1)!) } as MessageEvent<
        readonly Diagnosis[]
      >);
    for (const gap of [1, 2, 25]) latest.ask(joint(gap));
    answer();
    expect(deliver).not.toHaveBeenCalled();
    answer();
    expect(asked).toEqual([joint(1), joint(25)]);
    expect(deliver.mock.calls).toEqual([[diagnoseJoint(joint(25))]]);
  });

  it('delivers nothing for what was forgotten meanwhile, and answers what comes after', () => {
    const asked: SeenJoint[] = [];
    const worker: AnsweringWorker<readonly Diagnosis[]> = {
      onmessage: null,
      onerror: null,
      postMessage: (message: SeenJoint) => asked.push(message),
      terminate: vi.fn(),
    };
    const deliver = vi.fn();
    const latest = new LatestDiagnosis(deliver, () => worker);
    latest.ask(joint(1));
    latest.forget();
    worker.onmessage?.({ data: [] } as unknown as MessageEvent<readonly Diagnosis[]>);
    expect(deliver).not.toHaveBeenCalled();
    latest.ask(joint(3));
    worker.onmessage?.({ data: [] } as unknown as MessageEvent<readonly Diagnosis[]>);
    expect(asked).toHaveLength(2);
    expect(deliver).toHaveBeenCalledTimes(1);
  });

  it('without a worker waits until nothing changes any more, and tries only the last', async () => {
    const deliver = vi.fn();
    const latest = new LatestDiagnosis(deliver, () => {
      throw new Error('blocked');
    });
    latest.ask(joint(1));
    latest.ask(joint(3));
    expect(deliver).not.toHaveBeenCalled();
    await vi.waitFor(() => expect(deliver).toHaveBeenCalled());
    expect(deliver.mock.calls).toEqual([[diagnoseJoint(joint(3))]]);
  });
});
