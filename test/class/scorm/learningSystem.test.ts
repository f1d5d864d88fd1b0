import * as scorm from 'scorm-again/scorm12';
import { describe, expect, it } from 'vitest';
import {
  LearningSystem,
  type ScormApi,
  SUSPEND_LIMIT,
  type WindowLike,
  findApi,
} from '../../../src/class/scorm/learningSystem.ts';

/** The package's types know a default export that its module has not. */
const { Scorm12API } = scorm as unknown as { Scorm12API: typeof scorm.default };

/** An independent runtime of SCORM 1.2. */
function runtime(): ScormApi & { cmi: { suspend_data: string } } {
  const api = new Scorm12API({ autocommit: false, logLevel: 5 });
  api.cmi.core.student_id = 'bench-7';
  return api as unknown as ScormApi & { cmi: { suspend_data: string } };
}

const under = { score: 40, finished: false, passed: false };

describe('finding the learning system', () => {
  const api = runtime();
  it('looks up the frames, then at the opener', () => {
    const top: WindowLike = { API: api };
    expect(findApi({ parent: { parent: top } })).toBe(api);
    expect(findApi({ opener: { parent: top } })).toBe(api);
  });

  it('is not stopped by a frame of another origin, nor by a window that is its own parent', () => {
    const stranger: WindowLike = {
      get API(): ScormApi {
        throw new Error('cross-origin');
      },
      parent: { API: api },
    };
    expect(findApi({ parent: stranger })).toBe(api);
    const alone: { parent?: WindowLike } = {};
    alone.parent = alone;
    expect(findApi(alone)).toBeUndefined();
  });
});

describe('a session', () => {
  it('opens as incomplete, keeps and reports, and closes once', () => {
    const api = runtime();
    const session = new LearningSystem(api);
    expect([session.student, session.kept]).toEqual(['bench-7', '']);
    expect(api.LMSGetValue('cmi.core.lesson_status')).toBe('incomplete');
    const took = session.keep('half', under, { id: 'q-1', kind: 'fill-in', right: false });
    expect(took).toBe(true);
    expect(api.LMSGetValue('cmi.core.score.raw')).toBe('40');
    expect(api.LMSGetValue('cmi.interactions._count')).toBe('1');
    session.keep('all', { score: 83.4, finished: true, passed: true });
    expect(api.LMSGetValue('cmi.core.lesson_status')).toBe('passed');
    session.close();
    session.close();
    expect(session.keep('late', under)).toBe(false);
    expect(api.cmi.suspend_data).toBe('all');
  });

  it('says in a sentence that the learning system refused', () => {
    const api = { ...runtime(), LMSInitialize: () => 'false', LMSGetLastError: () => '101' };
    expect(() => new LearningSystem(api as unknown as ScormApi)).toThrow(
      /error 101.*open it again/s,
    );
  });

  it('never sends more than a learning system takes', () => {
    const session = new LearningSystem(runtime());
    expect(session.keep('x'.repeat(SUSPEND_LIMIT), under)).toBe(true);
    expect(() => session.keep('x'.repeat(SUSPEND_LIMIT + 1), under)).toThrow(RangeError);
  });
});
