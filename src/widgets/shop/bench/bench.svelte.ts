import { planJoint } from '../../../core/joint/planJoint.ts';
import type {
  Bit,
  Board,
  Guide,
  JointKind,
  JointSpec,
  LayoutRule,
  System,
} from '../../../core/joint/types.ts';
import { startingJoint, withoutDefaults } from './startingJoints.ts';

/** Fields that may be unset, so that the calculator's rule serves. */
type Optional<Fields> = { [Key in keyof Fields]?: Fields[Key] | undefined };

function changed<Fields extends object>(fields: Fields, change: Optional<Fields>): Fields {
  return Object.fromEntries(
    Object.entries({ ...fields, ...change }).filter(([, value]) => value !== undefined),
  ) as Fields;
}

/** The joint on the bench: what is set, and the plan that follows from it. */
export class Bench {
  #spec = $state.raw<JointSpec>(startingJoint('corner', 'in'));
  /** Joints of the other kinds as they were left, so that nothing set is lost. */
  // eslint-disable-next-line svelte/prefer-svelte-reactivity -- nothing shows it
  #left = new Map<JointKind, JointSpec>();
  /** Whether B's thickness follows A's. */
  #alike = $state(true);
  readonly plan = $derived.by(() => planJoint(this.#spec));

  constructor(spec: JointSpec) {
    this.#spec = spec;
    this.#alike = spec.a.thickness === spec.b.thickness;
  }

  get spec(): JointSpec {
    return this.#spec;
  }

  get alike(): boolean {
    return this.#alike && this.#spec.kind !== 'leg';
  }

  /** Puts another joint on the bench. */
  load(spec: JointSpec): void {
    this.#spec = spec;
    this.#alike = spec.a.thickness === spec.b.thickness;
  }

  set(change: Optional<JointSpec>): void {
    this.#spec = changed(this.#spec, change);
  }

  setGuide(change: Optional<Guide>): void {
    this.set({ guide: changed(this.#spec.guide ?? {}, change) });
  }

  setBit(change: Optional<Bit>): void {
    this.set({ bit: changed(this.#spec.bit ?? {}, change) });
  }

  setLayout(change: Optional<LayoutRule>): void {
    this.set({ layout: changed(this.#spec.layout ?? {}, change) });
  }

  setBoard(side: 'a' | 'b', change: Optional<Board>): void {
    let board = changed(this.#spec[side], change);
    // A leg is square: one side sets the other.
    if (this.#spec.kind === 'leg' && side === 'b') {
      const side = change.width ?? change.thickness ?? board.thickness;
      board = { ...board, thickness: side, width: side };
    }
    this.set({ [side]: board });
    if (side === 'a' && this.alike && change.thickness !== undefined) {
      this.set({ b: { ...this.#spec.b, thickness: change.thickness } });
    }
  }

  setAlike(alike: boolean): void {
    this.#alike = alike;
    if (alike) this.set({ b: { ...this.#spec.b, thickness: this.#spec.a.thickness } });
  }

  /** Another kind of joint: as it was left, or a first one with the stock that is on the bench. */
  setKind(kind: JointKind): void {
    if (kind === this.#spec.kind) return;
    const before = this.#spec;
    this.#left.set(before.kind, before);
    const known = this.#left.get(kind);
    if (known) {
      this.load(known);
      return;
    }
    const start = startingJoint(kind, before.system);
    const { thickness } = before.a;
    const { pin, stock, diameterRule, allowance, leave, bit, guide } = before;
    this.load(
      changed<JointSpec>(start, {
        a: { ...start.a, thickness },
        b: kind === 'leg' ? start.b : { ...start.b, thickness },
        pin,
        stock,
        diameterRule,
        allowance,
        leave,
        bit,
        guide,
      }),
    );
  }

  /** Stock, bands and defaults of the other system; the boards stay as they are. */
  setSystem(system: System): void {
    const { stock: _, ...spec } = withoutDefaults(this.#spec);
    this.#spec = { ...spec, system, pin: 'choose' };
  }
}
