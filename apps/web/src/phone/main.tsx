import '../parse-without-eval.js';
import './tokens.css';
import './styles/phone.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { showGround } from './ground.js';
import { Mistake } from './mistake.js';
import { PhoneApp } from './phone-app.js';
import { keepPhone } from './program.js';
import { askToKeep } from './storage.js';
import { readWho } from './who.js';

showGround();
void readWho();
void askToKeep();
void keepPhone();

createRoot(document.getElementById('root')!).render(
  <StrictMode>
    <Mistake>
      <PhoneApp />
    </Mistake>
  </StrictMode>,
);
