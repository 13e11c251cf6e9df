import { once } from 'node:events';
import { join } from 'node:path';
import { watch } from 'chokidar';
import { type Figures, figuresData } from '../figures/index.ts';
import type { CommandOptions } from './command-line.ts';
import { EXIT } from './exit.ts';
import { allFindings, type LoadedWorkspace, loadWorkspace } from './load.ts';
import { renderSite } from './pages.ts';
import { startPreviewServer } from './preview-server.ts';
import { reportFindings } from './report.ts';

/** Shows the pages on this machine and makes them again when a file of the workspace is saved; writes nothing. */
export async function preview({ workspace, port }: CommandOptions): Promise<number> {
  let loaded: LoadedWorkspace | undefined;
  const make = async (): Promise<ReadonlyMap<string, string>> => {
    loaded = loadWorkspace(workspace, loaded);
    reportFindings(allFindings(loaded), loaded.sources);
    const { pages, figures, data } = await renderSite(loaded, { pdf: false });
    return new Map([
      ...pages.map(({ url, html }) => [url, html] as const),
      ...figures.map(figuresFile),
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

function figuresFile(figures: Figures): readonly [string, string] {
  return [
    `yard/${figures.build.order.number}/figures.json`,
    JSON.stringify(figuresData(figures), undefined, 2),
  ];
}
