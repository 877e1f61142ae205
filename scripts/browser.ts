/**
 * Which browser the tests and scripts drive: one that is installed, else the Chromium that
 * @sparticuz/chromium ships together with the libraries it needs (a bare Linux machine has neither).
 */
import { existsSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';

const INSTALLED = [
  process.env.CHROME_PATH,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/snap/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  join(homedir(), 'AppData/Local/Google/Chrome/Application/chrome.exe'),
  'C:/Program Files/Google/Chrome/Application/chrome.exe',
];

/** The software rasteriser, so that pictures are the same on every machine; sRGB, no calls home. */
const FLAGS = [
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--ignore-gpu-blocklist',
  '--force-color-profile=srgb',
  '--disable-background-networking',
  '--disable-component-update',
  '--no-first-run',
];

export interface Browser {
  readonly executablePath: string;
  readonly args: readonly string[];
  readonly env: Readonly<Record<string, string>>;
}

/** Finds (or unpacks) a browser. CHROME_PATH names one; PACKAGED_CHROMIUM=1 asks for the packaged one. */
export async function findBrowser(): Promise<Browser> {
  const installed = process.env.PACKAGED_CHROMIUM
    ? undefined
    : INSTALLED.find((path) => path && existsSync(path));
  const args = process.getuid?.() === 0 ? [...FLAGS, '--no-sandbox'] : FLAGS;
  const env = environment();
  if (installed) return { executablePath: installed, args, env };
  // The package unpacks its shared libraries only where it believes to run on a bare cloud image.
  process.env.AWS_LAMBDA_JS_RUNTIME = 'nodejs20.x';
  const { default: packaged } = await import('@sparticuz/chromium');
  const executablePath = await packaged.executablePath();
  const libraries = environment();
  // Its libraries are for the browser alone: other programs of this run keep the machine's own.
  restore('LD_LIBRARY_PATH', env.LD_LIBRARY_PATH);
  restore('AWS_LAMBDA_JS_RUNTIME', env.AWS_LAMBDA_JS_RUNTIME);
  return {
    executablePath,
    args: [...args, '--no-zygote', '--headless=shell'],
    env: libraries,
  };
}

const environment = () =>
  Object.fromEntries(
    Object.entries(process.env).filter(
      (entry): entry is [string, string] => entry[1] !== undefined,
    ),
  );

function restore(name: string, value: string | undefined) {
  if (value === undefined) delete process.env[name];
  else process.env[name] = value;
}
