import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

export default defineConfig({
  root: import.meta.dirname,
  base: './',
  plugins: [react()],
  server: { port: 5179 },
  build: { outDir: '../../node_modules/.cache/stage-preview', emptyOutDir: true },
});
