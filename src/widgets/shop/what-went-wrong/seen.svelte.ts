import { type Mm, mm } from '../../../core/length/mm.ts';
import type { Signs } from '../../../core/trial/signs.ts';

/** Where along the joint something shows. */
export type Ends = 'both' | 'start' | 'end';

/** How one board's holes came through. */
export type Holes = 'none' | 'some' | 'all';

/** What the reader ticks and measures of a dry fit. Lengths in mm. */
export class Seen {
  open = $state(false);
  /** `middle`: the ends touch; `rocks`: it rocks over a pin in the middle. */
  openAt = $state<Ends | 'middle' | 'rocks'>('both');
  gap = $state<Mm>(mm(1.5));

  step = $state(false);
  stepAt = $state<Ends>('both');
  proud = $state<'a' | 'b'>('b');
  stepSize = $state<Mm>(mm(1));

  slid = $state(false);
  /** Which way A lies from its place: 'away' from its reference end, or 'toward' it. */
  slidWay = $state<'away' | 'toward'>('away');
  slidBy = $state<Mm>(mm(3));

  through = $state<Record<'a' | 'b', Holes>>({ a: 'none', b: 'none' });
  throughBy = $state<Record<'a' | 'b', Mm | undefined>>({ a: undefined, b: undefined });

  pins = $state<'slide' | 'bind' | 'rattle'>('slide');
  meets = $state(true);

  /** Depths of a pin's two holes at full diameter, and the pin's length, where they were measured. */
  depths = $state<Record<'a' | 'b' | 'pin', Mm | undefined>>({
    a: undefined,
    b: undefined,
    pin: undefined,
  });

  /** Whether anything is off. */
  readonly anything = $derived.by(
    () =>
      this.open ||
      this.step ||
      this.slid ||
      this.through.a !== 'none' ||
      this.through.b !== 'none' ||
      this.pins !== 'slide' ||
      !this.meets ||
      (this.depths.a !== undefined && this.depths.b !== undefined),
  );

  /**
   * The signs as they were seen. What is not ticked was not there; where the pins don't find their
   * holes, nobody can see how the boards would stand.
   * @param pinLength taken where the pin was not measured
   */
  signs(pinLength: Mm): Signs {
    const { depths } = this;
    const at = (ends: string, size: number): { start: Mm; end: Mm } => ({
      start: mm(ends === 'end' ? 0 : size),
      end: mm(ends === 'start' ? 0 : size),
    });
    const middle = this.openAt === 'middle';
    const stands: Signs = this.meets
      ? {
          opening: this.open && !middle ? at(this.openAt, this.gap) : at('both', 0),
          rocks: this.open && this.openAt === 'rocks',
          openInMiddle: this.open && middle,
          step: this.step
            ? at(this.stepAt, (this.proud === 'b' ? 1 : -1) * this.stepSize)
            : at('both', 0),
          endsOff: mm(this.slid ? (this.slidWay === 'away' ? 1 : -1) * this.slidBy : 0),
        }
      : {};
    const through = (member: 'a' | 'b') => {
      const by = this.throughBy[member];
      return {
        holes: this.through[member],
        ...(this.through[member] !== 'none' && by !== undefined && { by }),
      };
    };
    return {
      ...stands,
      through: { a: through('a'), b: through('b') },
      pins: this.pins,
      meets: this.meets,
      ...(depths.a !== undefined &&
        depths.b !== undefined && {
          endRoom: mm(depths.a + depths.b - (depths.pin ?? pinLength)),
        }),
    };
  }
}
