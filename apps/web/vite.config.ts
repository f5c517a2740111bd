import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const api = process.env.API ?? 'http://127.0.0.1:8420';

// Libs are taken from source, so that a change in one shows at once and no build of theirs is needed.
export default defineConfig({
  root: import.meta.dirname,
  plugins: [react()],
  resolve: { conditions: ['source', 'module', 'browser', 'development|production'] },
  // A page that is open while another version is built still finds its parts: build-pages.mjs takes old ones away.
  build: { target: 'es2023', sourcemap: true, modulePreload: { polyfill: false }, emptyOutDir: false },
  server: { port: 8422, proxy: { '/api': { target: api, changeOrigin: false } } },
});
