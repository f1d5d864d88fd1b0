/** What stands in a package's `imsmanifest.xml`. */
export interface ManifestOf {
  /** Unique to the assignment; letters, digits, hyphens. */
  readonly identifier: string;
  readonly title: string;
  /** The page that the learning system opens, from the package's root. */
  readonly launch: string;
  /** 0 to 100: what counts as passed. */
  readonly passMark: number;
  /** Every file of the package but the manifest, from its root. */
  readonly files: readonly string[];
}

/**
 * The manifest of a package with one page to open, after SCORM 1.2 (ADL, Content Aggregation Model,
 * 2001) and its schemas.
 */
export function manifest({ identifier, title, launch, passMark, files }: ManifestOf): string {
  const listed = files.map((file) => `      <file href="${escaped(file)}"/>`);
  return `<?xml version="1.0" encoding="UTF-8"?>
<manifest identifier="${escaped(identifier)}" version="1.0"
    xmlns="http://www.imsproject.org/xsd/imscp_rootv1p1p2"
    xmlns:adlcp="http://www.adlnet.org/xsd/adlcp_rootv1p2"
    xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"
    xsi:schemaLocation="http://www.imsproject.org/xsd/imscp_rootv1p1p2 imscp_rootv1p1p2.xsd http://www.adlnet.org/xsd/adlcp_rootv1p2 adlcp_rootv1p2.xsd">
  <metadata>
    <schema>ADL SCORM</schema>
    <schemaversion>1.2</schemaversion>
  </metadata>
  <organizations default="course">
    <organization identifier="course">
      <title>${escaped(title)}</title>
      <item identifier="assignment" identifierref="pages" isvisible="true">
        <title>${escaped(title)}</title>
        <adlcp:masteryscore>${Math.round(passMark)}</adlcp:masteryscore>
      </item>
    </organization>
  </organizations>
  <resources>
    <resource identifier="pages" type="webcontent" adlcp:scormtype="sco" href="${escaped(launch)}">
${listed.join('\n')}
    </resource>
  </resources>
</manifest>
`;
}

function escaped(text: string): string {
  const entities: Record<string, string> = {
    '&': '&amp;',
    '<': '&lt;',
    '>': '&gt;',
    '"': '&quot;',
  };
  return (
    text
      // What XML 1.0 can't hold at all.
      // eslint-disable-next-line no-control-regex
      .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Surrogate}/gu, '')
      .replace(/[&<>"]/g, (character) => entities[character]!)
  );
}
