import type { MovingFrame } from './types';

/**
 * Lets picture, caption and readings follow the slider. Its text is written into the page, where nothing of
 * this program is: it may use nothing from outside itself.
 */
export function follow(): void {
  const frames: MovingFrame[] = JSON.parse(document.getElementById('frames')?.textContent ?? '[]');
  const slider = document.getElementById('place') as HTMLInputElement;
  const moving = document.querySelector('.moving') as HTMLElement;
  const image = moving.querySelector('img') as HTMLImageElement;
  const write = (element: Element | null | undefined, text: string | undefined) => {
    if (element) element.textContent = text ?? '';
  };
  const show = () => {
    const frame = frames[Number(slider.value)];
    if (!frame) return;
    image.src = frame.image;
    image.alt = frame.alt;
    write(moving.querySelector('strong'), frame.title);
    const details = moving.querySelectorAll('.detail');
    for (let i = 0; i < details.length; i++) write(details[i], frame.details[i]);
    write(document.getElementById('where'), frame.place);
    write(document.getElementById('changes'), frame.changes);
    const [cells, says] = [
      document.querySelectorAll('.follows'),
      document.querySelectorAll('.says'),
    ];
    for (let i = 0; i < cells.length; i++) {
      write(cells[i], frame.cells[i]);
      write(says[i], frame.says[i]);
    }
    slider.setAttribute('aria-valuetext', frame.place);
  };
  slider.max = String(frames.length - 1);
  slider.addEventListener('input', show);
  // A reloaded page may keep the place of its slider.
  show();
}
