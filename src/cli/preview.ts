import { once } from 'node:events';
import { join } from 'node:path';
import { watch } from 'chokidar';
import { sealedBytes } from '../read/index.ts';
import { figuresText } from './build.ts';
import type { CommandOptions } from './commands.ts';
import { EXIT } from './exit.ts';
import { allFindings, type LoadedWorkspace, loadWorkspace } from './load.ts';
import { renderSite } from './pages.ts';
import { startPreviewServer } from './preview-server.ts';
import { refuse } from './refuse.ts';
import { reportFindings } from './report.ts';

/** Shows the pages on this machine and makes them again when a file of the workspace is saved; writes nothing. */
export async function preview({
  workspace,
  port: typed,
}: CommandOptions<'preview'>): Promise<number> {
  const port = Number(typed);
  if (!Number.isInteger(port) || port < 1 || port > 65_535)
    return refuse('preview', `--port ${typed} is not a whole number from 1 to 65535`);
  let loaded: LoadedWorkspace | undefined;
  const make = async (): Promise<ReadonlyMap<string, string>> => {
    loaded = loadWorkspace(workspace, loaded && { earlier: loaded });
    reportFindings(allFindings(loaded), loaded);
    const current = loaded;
    const { pages, sealed, figures, data } = await renderSite(current, { pdf: false });
    return new Map([
      ...pages.map(({ url, html }) => [url, html] as const),
      ...sealed.flatMap(({ line, url }) => {
        const page = sealedBytes(workspace, line, 'html');
        return typeof page === 'string' ? [] : [[url, Buffer.from(page).toString('utf8')] as const];
      }),
      ...figures.map((one) => {
        const { number } = one.build.order;
        return [`yard/${number}/figures.json`, figuresText(one, current)] as const;
      }),
      ...data.map(({ url, text }) => [url, text] as const),
    ]);
  };
  const server = await startPreviewServer(await make(), port);
  process.stdout.write(`Open ${server.address}/yard/index.html ; Ctrl-C ends the preview\n`);
  const folders = ['orders', 'catalogue'].map((name) => join(workspace, name));
  const watcher = watch(folders, {
    ignoreInitial: true,
    ignored: /\.tmp$|schema\.json$/,
    awaitWriteFinish: { stabilityThreshold: 150, pollInterval: 50 },
  });
  let making = Promise.resolve();
  watcher.on('all', () => {
    making = making.then(make).then(
      (pages) => server.show(pages),
      (error: unknown) =>
        void process.stderr.write(`The pages stay as they were: ${String(error)}\n`),
    );
  });
  await once(process, 'SIGINT');
  await Promise.all([watcher.close(), server.close()]);
  return EXIT.fine;
}
