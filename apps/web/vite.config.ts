import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const api = process.env.API ?? 'http://127.0.0.1:8420';

// Libs are taken from source, so that a change in one shows at once and no build of theirs is needed.
export default defineConfig({
  root: import.meta.dirname,
  plugins: [react()],
  resolve: { conditions: ['source', 'module', 'browser', 'development|production'] },
  build: { target: 'es2023', sourcemap: true, modulePreload: { polyfill: false } },
  server: { port: 8422, proxy: { '/api': { target: api, changeOrigin: false } } },
});
