import '@fontsource-variable/literata/opsz.css';
import './style/tokens.css';
import './style/base.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { models } from '../models/browser';
import { dimensionsOf } from '../models/framing';
import { demoSession } from '../session/demo';
import type { Outlined } from '../session/hold';
import { known } from '../session/known';
import { landmarksFor } from '../sitter/landmarks';
import { App } from './App';
import { start } from './state/start';

// Until the sculpture is there, holds are computed from the landmarks alone.
const own = dimensionsOf(known(models.sitters, demoSession().sitter.model));
let sitter: Outlined = { landmarks: landmarksFor(own), meshes: [] };

const root = document.getElementById('app');
if (root)
  start(() => ({ models, sitter })).then((started) =>
    createRoot(root).render(
      <StrictMode>
        <App
          started={started}
          holdSitter={(next) => {
            sitter = next;
          }}
        />
      </StrictMode>,
    ),
  );
