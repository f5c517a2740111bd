import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';

const api = process.env.API ?? 'http://127.0.0.1:8420';

/** The service worker knows every file of its version by name: another version is another worker. */
const officeWorker = (): Plugin => ({
  name: 'office-worker',
  apply: 'build',
  generateBundle: {
    order: 'post',
    handler(_, bundle) {
      const files = Object.keys(bundle)
        .filter((name) => /^assets\/.*\.(js|css|woff2)$/.test(name))
        .sort()
        .map((name) => `/${name}`);
      const index = bundle['index.html'];
      if (index?.type !== 'asset') throw new Error('index.html is no part of the build');
      const version = createHash('sha256')
        .update(files.join('\n') + String(index.source))
        .digest('hex');
      const program = readFileSync(join(import.meta.dirname, 'office-worker.js'), 'utf8');
      this.emitFile({
        type: 'asset',
        fileName: 'office-worker.js',
        source: `const version = '${version.slice(0, 12)}';\nconst files = ${JSON.stringify(files)};\n${program}`,
      });
    },
  },
});

// Libs are taken from source, so that a change in one shows at once and no build of theirs is needed.
export default defineConfig({
  root: import.meta.dirname,
  plugins: [react(), officeWorker()],
  resolve: { conditions: ['source', 'module', 'browser', 'development|production'] },
  // A page that is open while another version is built still finds its parts: build-pages.mjs takes old ones away.
  build: { target: 'es2023', sourcemap: true, modulePreload: { polyfill: false }, emptyOutDir: false },
  server: { port: 8422, proxy: { '/api': { target: api, changeOrigin: false } } },
});
