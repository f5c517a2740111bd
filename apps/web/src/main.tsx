import './parse-without-eval.js';
import './styles/tokens.css';
import './styles/base.css';
import './styles/ui/ui.css';
import './styles/frame.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { keepProgram } from './api/index.js';
import { App } from './app.js';
import { showGround } from './frame/ground.js';

showGround();
void keepProgram('/office-worker.js', '/');

createRoot(document.getElementById('root')!).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
