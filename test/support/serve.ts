/**
 * Serves a built site with Astro's preview, in the foreground until it is stopped. The command
 * line's `astro preview` may put itself in the background, and refuses to run twice.
 *
 *     node test/support/serve.ts [folder] [port]
 */
import { preview } from 'astro';

const [folder, port] = process.argv.slice(2);

const server = await preview({
  root: `${import.meta.dirname}/../..`,
  ...(folder && { outDir: folder }),
  ...(port && { server: { port: Number(port) } }),
});
process.on('SIGINT', stop);
process.on('SIGTERM', stop);

async function stop() {
  await server.stop();
  process.exit(0);
}
