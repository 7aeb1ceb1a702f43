// Serves the files of a folder on this machine alone.
import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, normalize } from 'node:path';

const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.ico': 'image/x-icon',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
};

export async function serve(folder) {
  const server = createServer(async (request, response) => {
    let file = join(folder, normalize(decodeURIComponent(new URL(request.url, 'http://x').pathname)));
    if ((await stat(file).catch(() => null))?.isDirectory()) file = join(file, 'index.html');
    if (!(await stat(file).catch(() => null))) {
      response.writeHead(404).end();
      return;
    }
    // The scripts are the same on every page: a browser that may keep them need not compile them again.
    response.writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream', 'cache-control': 'max-age=3600' });
    createReadStream(file).pipe(response);
  });
  await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
  return { root: `http://127.0.0.1:${server.address().port}/`, close: () => server.close() };
}
