import { once } from 'node:events';
import { createServer, type ServerResponse } from 'node:http';

export interface PreviewServer {
  /** `http://127.0.0.1:8080` */
  readonly address: string;
  /** Puts new pages in place of the old and has open browsers load them. */
  show(pages: ReadonlyMap<string, string>): void;
  close(): Promise<void>;
}

const CHANGES = '/changes';
const TYPES: Readonly<Record<string, string>> = { json: 'application/json', csv: 'text/csv' };
const RELOAD = `<script>new EventSource('${CHANGES}').onmessage = () => location.reload();</script>`;

/**
 * Serves pages from memory to this machine only: they show costs and margins.
 *
 * @param port - 0 takes any that is free
 * @throws the system's error when the port is taken
 */
export async function startPreviewServer(
  first: ReadonlyMap<string, string>,
  port: number,
): Promise<PreviewServer> {
  let pages = first;
  const listeners = new Set<ServerResponse>();
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    if (pathname === CHANGES) {
      response.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' });
      response.write(': open\n\n');
      listeners.add(response);
      response.on('close', () => listeners.delete(response));
      return;
    }
    answer(response, decodeURIComponent(pathname.slice(1)) || 'yard/index.html', pages);
  });
  server.listen(port, '127.0.0.1');
  await once(server, 'listening');
  const bound = server.address();
  const taken = typeof bound === 'object' && bound ? bound.port : port;
  return {
    address: `http://127.0.0.1:${taken}`,
    show(next) {
      pages = next;
      for (const listener of listeners) listener.write('data: changed\n\n');
    },
    async close() {
      server.close();
      server.closeAllConnections();
      await once(server, 'close');
    },
  };
}

function answer(response: ServerResponse, url: string, pages: ReadonlyMap<string, string>): void {
  const content = pages.get(url);
  if (content === undefined) {
    response.writeHead(404, { 'content-type': 'text/plain; charset=utf-8' });
    response.end(
      url.endsWith('.pdf') ? 'PDFs are made by: npm run build' : 'There is no such page.',
    );
    return;
  }
  const [, kind = 'html'] = /\.(json|csv)$/.exec(url) ?? [];
  response.writeHead(200, {
    'content-type': `${TYPES[kind] ?? 'text/html'}; charset=utf-8`,
    'cache-control': 'no-store',
  });
  response.end(kind === 'html' ? content.replace('</body>', `${RELOAD}</body>`) : content);
}
