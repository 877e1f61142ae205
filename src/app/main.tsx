// First, so that the worker starts while the page's own code still runs.
import { workshop } from './state/workshop';
import '@fontsource-variable/literata/opsz.css';
import './style/tokens.css';
import './style/base.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { models } from '../models/browser';
import { dimensionsOf } from '../models/framing';
import { type Cast, unsculpted } from '../session/cast';
import { demoSession } from '../session/demo';
import { known } from '../session/known';
import { App } from './App';
import { start } from './state/start';

// Until the sculpture is there, holds are computed from the landmarks alone.
const own = dimensionsOf(known(models.sitters, demoSession().people[0].model));
let cast: Cast = { '1': unsculpted(own) };

const root = document.getElementById('app');
if (root)
  start(() => ({ models, cast })).then((started) =>
    createRoot(root).render(
      <StrictMode>
        <App
          started={started}
          workshop={workshop}
          holdCast={(next) => {
            cast = next;
          }}
        />
      </StrictMode>,
    ),
  );
