import '../parse-without-eval.js';
import './tokens.css';
import './styles/phone.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { showGround } from './ground.js';
import { Mistake } from './mistake.js';
import { PhoneApp } from './phone-app.js';
import { askToKeep } from './storage.js';
import { readWho } from './who.js';

showGround();
void readWho();
void askToKeep();
// Only over HTTPS, and on the machine itself: elsewhere the phone needs a line to open, and says so.
if ('serviceWorker' in navigator && import.meta.env.PROD)
  void navigator.serviceWorker.register('/phone/sw.js', { scope: '/phone/' });

createRoot(document.getElementById('root')!).render(
  <StrictMode>
    <Mistake>
      <PhoneApp />
    </Mistake>
  </StrictMode>,
);
