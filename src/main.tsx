import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App.tsx';
import { keepOffline } from './keep/appUpdate.ts';
import { beginHere } from './keep/keepHere.ts';
import './style.css';

const root = document.getElementById('root');
if (!root) throw new Error('the page has no element "root"');
const page = createRoot(root);
// what was kept is there before the first picture, so that no other plan is seen for a moment
beginHere().finally(() =>
  page.render(
    <StrictMode>
      <App />
    </StrictMode>,
  ),
);

if (import.meta.env.PROD) keepOffline();
