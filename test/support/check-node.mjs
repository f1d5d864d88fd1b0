// Plain JavaScript that an old Node can still read, so that it can say what is needed.
const [major, minor] = process.versions.node.split('.').map(Number);

if (major < 22 || (major === 22 && minor < 18)) {
  console.error(
    [
      `Matched Holes needs Node 22.18 or later, and this is Node ${process.versions.node}.`,
      '',
      'On Linux (x64, arm64) and Windows (x64), npm brings a suitable Node along: run `npm ci` without',
      '--omit=optional, then use `npm start` and `npm test` (not `node` by itself).',
      'Elsewhere, install a current Node from https://nodejs.org and run `npm ci` again.',
    ].join('\n'),
  );
  process.exit(1);
}
