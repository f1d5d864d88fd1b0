import { describe, expect, it, vi } from 'vitest';
import { mm } from '../../../../src/core/index.ts';
import { type AllOdds, LatestOdds } from '../../../../src/widgets/figures/errors/latestOdds.ts';
import { allRowOdds } from '../../../../src/widgets/figures/errors/rowOdds.ts';
import type { RowSettings } from '../../../../src/widgets/figures/errors/rowSettings.ts';
import type { AnsweringWorker } from '../../../../src/widgets/latestAnswer.ts';

const settings: RowSettings = {
  spacing: mm(79),
  margin: mm(38),
  play: mm(0.1),
  sigmaAlong: mm(0.05),
  sigmaAcross: mm(0.05),
  guideOff: mm(0),
  turnedOver: false,
  mayTurn: false,
  flushWithin: mm(0.1),
};

/** A worker that answers when the test says so. */
function slowWorker() {
  const asked: RowSettings[] = [];
  const worker: AnsweringWorker<AllOdds> = {
    onmessage: null,
    onerror: null,
    postMessage: (message: RowSettings) => asked.push(message),
    terminate: vi.fn(),
  };
  const answer = (odds: AllOdds) => worker.onmessage?.({ data: odds } as MessageEvent<AllOdds>);
  return { worker, asked, answer };
}

const answers = (play: number) => allRowOdds({ ...settings, play: mm(play) });

describe('LatestOdds', () => {
  it('starts no worker before anything is asked', () => {
    const start = vi.fn(() => slowWorker().worker);
    const latest = new LatestOdds(() => undefined, start);
    expect(start).not.toHaveBeenCalled();
    latest.ask(settings);
    latest.ask(settings);
    expect(start).toHaveBeenCalledTimes(1);
  });

  it('asks one thing at a time, drops the stale answer and all but the last of what waits', () => {
    const { worker, asked, answer } = slowWorker();
    const deliver = vi.fn();
    const latest = new LatestOdds(deliver, () => worker);
    for (const play of [0.1, 0.11, 0.12, 0.13]) latest.ask({ ...settings, play: mm(play) });
    expect(asked.map(({ play }) => play)).toEqual([0.1]);
    answer(answers(0.1));
    expect(deliver).not.toHaveBeenCalled();
    expect(asked.map(({ play }) => play)).toEqual([0.1, 0.13]);
    const last = answers(0.13);
    answer(last);
    expect(deliver.mock.calls).toEqual([[last]]);
  });

  it('asks again after an answer', () => {
    const { worker, asked, answer } = slowWorker();
    const deliver = vi.fn();
    const latest = new LatestOdds(deliver, () => worker);
    latest.ask(settings);
    answer(answers(0.1));
    latest.ask({ ...settings, play: mm(0.2) });
    answer(answers(0.2));
    expect(asked).toHaveLength(2);
    expect(deliver).toHaveBeenCalledTimes(2);
  });

  it('delivers nothing once closed, and ends the worker', () => {
    const { worker, answer } = slowWorker();
    const deliver = vi.fn();
    const latest = new LatestOdds(deliver, () => worker);
    latest.ask(settings);
    latest.close();
    answer(answers(0.1));
    expect(worker.terminate).toHaveBeenCalled();
    expect(deliver).not.toHaveBeenCalled();
  });

  it('tries the joints itself where no worker can be started, with the same outcome', async () => {
    const deliver = vi.fn();
    const latest = new LatestOdds(deliver, () => {
      throw new Error('blocked');
    });
    latest.ask({ ...settings, play: mm(0.2) });
    latest.ask(settings);
    await vi.waitFor(() => expect(deliver).toHaveBeenCalled());
    expect(deliver.mock.calls).toEqual([[allRowOdds(settings)]]);
  });

  it('leaves the page alive between two numbers of pins when it tries them itself', async () => {
    let delivered = false;
    let turns = 0;
    const latest = new LatestOdds(
      () => (delivered = true),
      () => {
        throw new Error('blocked');
      },
    );
    latest.ask(settings);
    while (!delivered) {
      await new Promise((resume) => setTimeout(resume));
      turns++;
    }
    expect(turns).toBeGreaterThan(8);
  });

  it('takes over from a worker that fails', async () => {
    const { worker, asked } = slowWorker();
    const deliver = vi.fn();
    const latest = new LatestOdds(deliver, () => worker);
    latest.ask(settings);
    worker.onerror?.({} as ErrorEvent);
    await vi.waitFor(() => expect(deliver).toHaveBeenCalledTimes(1));
    expect(worker.terminate).toHaveBeenCalled();
    latest.ask({ ...settings, play: mm(0.3) });
    await vi.waitFor(() => expect(deliver).toHaveBeenCalledTimes(2));
    expect(asked).toHaveLength(1);
  });
});

describe('the odds of one pin to ten', () => {
  it('never rise when a pin is added, turning or not', () => {
    for (const mayTurn of [true, false]) {
      const shares = allRowOdds({ ...settings, mayTurn }).map(({ probability }) => probability);
      expect(shares[0]).toBe(1);
      expect(shares).toEqual([...shares].sort((a, b) => b - a));
      expect(new Set(shares).size).toBeGreaterThan(5);
    }
  });

  it('do not mind a guide off the middle: from the same face nothing changes, turned over only flushness', () => {
    const [plain, shared, turned] = [
      settings,
      { ...settings, guideOff: mm(0.4) },
      { ...settings, guideOff: mm(0.4), turnedOver: true },
    ].map(allRowOdds) as [AllOdds, AllOdds, AllOdds];
    expect(shared).toEqual(plain);
    const closing = (all: AllOdds) => all.map(({ probability }) => probability);
    expect(closing(turned)).toEqual(closing(plain));
    expect(turned.map(({ flushable }) => flushable.probability)).toEqual(Array(10).fill(0));
    expect(plain[2]!.flushable.probability).toBeGreaterThan(0.3);
  });
});
