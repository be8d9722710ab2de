import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App.tsx';
import { keepOffline } from './keep/appUpdate.ts';
import './style.css';

const root = document.getElementById('root');
if (!root) throw new Error('the page has no element "root"');
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);

if (import.meta.env.PROD) keepOffline();
