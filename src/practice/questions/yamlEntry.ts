import { LineCounter, type Node, isMap, isScalar, isSeq, parseDocument } from 'yaml';
import type { Mm } from '../../core/length/mm.ts';
import { parseLength } from '../../core/length/parseLength.ts';
import { ContentError } from './contentError.ts';

/** Where the entries of one file are. */
interface File {
  readonly name: string;
  readonly lines: LineCounter;
}

/**
 * One value of a YAML file, with its line: asked for what it should be, it gives that or throws a
 * `ContentError` that names file and line.
 */
export class YamlEntry {
  readonly #file: File;
  readonly #node: Node | null;
  /** What the value is called in errors: 'ask', 'item 2 of choices'. */
  readonly #name: string;
  /** File and line: 'content/setups.yaml:12'. */
  readonly place: string;

  constructor(file: File, node: Node | null, name: string, offset: number) {
    this.#file = file;
    this.#node = node;
    this.#name = name;
    this.place = `${file.name}:${file.lines.linePos(offset).line}`;
  }

  /** @throws ContentError always, at this value's line */
  fail(message: string): never {
    throw new ContentError(this.place, message);
  }

  /** Refuses every field that is not one of these: most often a misspelled one. */
  only(...names: readonly string[]): this {
    for (const [name, field] of this.fields()) {
      if (!names.includes(name)) {
        field.fail(`'${name}' is not a field of ${this.#name}; it can have ${names.join(', ')}`);
      }
    }
    return this;
  }

  /** All fields in the file's order. */
  fields(): readonly (readonly [string, YamlEntry])[] {
    if (!isMap(this.#node)) this.fail(`${this.#name} should be a set of 'name: value' fields`);
    return this.#node.items.map(({ key, value }) => {
      const start = (key as Node).range?.[0] ?? 0;
      const name = isScalar(key) ? String(key.value) : '';
      return [name, new YamlEntry(this.#file, value as Node | null, name, start)] as const;
    });
  }

  find(name: string): YamlEntry | undefined {
    return this.fields().find(([each]) => each === name)?.[1];
  }

  get(name: string): YamlEntry {
    return this.find(name) ?? this.fail(`${this.#name} has no '${name}'; add one`);
  }

  items(): readonly YamlEntry[] {
    if (!isSeq(this.#node)) this.fail(`${this.#name} should be a list, each line with a dash`);
    return this.#node.items.map((item, i) => {
      const start = (item as Node).range?.[0] ?? 0;
      return new YamlEntry(this.#file, item as Node, `item ${i + 1} of ${this.#name}`, start);
    });
  }

  #value(): unknown {
    return isScalar(this.#node) ? this.#node.value : undefined;
  }

  /** A text, its line ends turned into blanks. */
  text(): string {
    const value = this.#value();
    if (typeof value !== 'string' || value.trim() === '') {
      this.fail(
        `${this.#name} should be a text; put quotes around it where it looks like a number`,
      );
    }
    return value.trim().replace(/\s+/g, ' ');
  }

  /** A name of lower-case letters, digits and hyphens that begins with a letter. */
  id(): string {
    const value = this.text();
    if (!/^[a-z][a-z0-9-]*$/.test(value)) {
      this.fail(`${this.#name} '${value}' should be lower-case words joined by hyphens`);
    }
    return value;
  }

  number(): number {
    const value = this.#value();
    if (typeof value !== 'number' || !Number.isFinite(value)) {
      this.fail(`${this.#name} should be a number`);
    }
    return value;
  }

  /** A whole number from 1. */
  count(): number {
    const value = this.number();
    if (!Number.isInteger(value) || value < 1) this.fail(`${this.#name} should be 1, 2, 3 …`);
    return value;
  }

  /** True or false; or undefined where the value is a text. */
  flag(): boolean | undefined {
    const value = this.#value();
    return typeof value === 'boolean' ? value : undefined;
  }

  /** A length that names its unit, such as `3/4 in` or `18 mm`. */
  length(): Mm {
    const value = this.#value();
    const text = typeof value === 'number' ? String(value) : this.text();
    const inInches = parseLength(text, 'in');
    const inMillimeters = parseLength(text, 'mm');
    if (!inInches.ok) this.fail(`${this.#name}: ${inInches.reason}`);
    if (!inMillimeters.ok || inMillimeters.mm !== inInches.mm) {
      this.fail(`${this.#name} '${text}' has no unit; write '${text} in' or '${text} mm'`);
    }
    return inInches.mm;
  }

  /** A number that names this unit, such as `8 %` or `0.3 ml`. */
  measure(unit: string): number {
    const value = this.#value();
    const text = typeof value === 'number' ? String(value) : this.text();
    const number = /^(-?\d+(?:\.\d+)?)\s*(\S+)$/.exec(text);
    if (number?.[2] !== unit) {
      this.fail(`${this.#name} '${text}' should be a number with its unit, such as '1.5 ${unit}'`);
    }
    return Number(number[1]);
  }

  oneOf<const Name extends string>(names: readonly Name[]): Name {
    const value = this.text();
    const found = names.find((name) => name === value);
    return found ?? this.fail(`${this.#name} '${value}' should be one of ${names.join(', ')}`);
  }
}

/**
 * Opens a YAML file's text.
 * @param name the file as errors call it, from the project's root
 * @throws ContentError where the text is not YAML, with file and line
 */
export function readYaml(name: string, text: string): YamlEntry {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false });
  const file = { name, lines };
  const [error] = document.errors;
  if (error) {
    throw new ContentError(`${name}:${lines.linePos(error.pos[0]).line}`, error.message);
  }
  return new YamlEntry(file, document.contents, 'the file', 0);
}
