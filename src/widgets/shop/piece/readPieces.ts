import { encodeSetup } from '../../../core/setup/setupLink.ts';
import type { JointSpec } from '../../../core/joint/types.ts';
import { readSpec } from '../../../practice/questions/setups.ts';
import { readYaml } from '../../../practice/questions/yamlEntry.ts';

/** A piece to start from: what it is called, and the link that holds it. */
export interface NamedPiece {
  readonly id: string;
  readonly title: string;
  readonly link: string;
}

/**
 * Reads content/pieces.yaml.
 * @param setupOf a joint of content/setups.yaml by its name; undefined where there is none
 * @throws ContentError with file and line
 */
export function readPieces(
  file: string,
  text: string,
  setupOf: (name: string) => JointSpec | undefined,
): readonly NamedPiece[] {
  return readYaml(file, text)
    .fields()
    .map(([id, piece]) => {
      piece.only('title', 'joints', 'boards');
      const title = piece.get('title').text();
      const entries = piece.get('joints').items();
      const boards = piece
        .get('boards')
        .fields()
        .map(([name, count]) => ({ name, count: count.number() }));
      const joints = entries.map((entry) => {
        entry.only('name', 'setup', 'change', 'a', 'b', 'count');
        const setup = entry.get('setup');
        const base = setupOf(setup.text());
        if (base === undefined)
          return setup.fail(`no joint '${setup.text()}' in content/setups.yaml`);
        const change = entry.find('change');
        return change ? readSpec(change, base) : base;
      });
      const board = (name: string) => {
        if (!boards.some((each) => each.name === name)) {
          piece.get('boards').fail(`'${name}' is a joint's board, and is not counted here`);
        }
        return name;
      };
      const labels = entries.map((entry) => ({
        name: entry.get('name').text(),
        count: entry.find('count')?.count() ?? 1,
        boardA: board(entry.get('a').text()),
        boardB: board(entry.get('b').text()),
      }));
      return { id, title, link: encodeSetup({ joints, labels, piece: { title, boards } }) };
    });
}
