import { Do } from '../controls/words';
import type { Darkroom } from '../darkroom/useDarkroom';
import { offerFile } from '../state/offerFile';
import { useWorkbench } from '../state/workbench';
import { fileName } from '../takeaway/fileName';
import { useWork } from '../takeaway/useWork';
import { WorkBar } from '../takeaway/WorkBar';
import { handout as said } from '../words/handout.en';

interface Saved {
  readonly name: string;
  readonly bytes: number;
  readonly missing: readonly string[];
}

/** Saves the pages as a PDF, or hands them to the browser's own printing. */
export function SavePdf({ darkroom }: { darkroom: Darkroom }) {
  const { session } = useWorkbench();
  const work = useWork<Saved>();
  const printing = useWork<void>();
  const isEmpty = session.handout.pages.length === 0;
  const save = () =>
    work.start(async (signal, onProgress) => {
      const { makePdf } = await import('./makePdf');
      const { blob, missing } = await makePdf({ session, darkroom, signal, onProgress });
      const name = fileName(session.title, 'pdf');
      offerFile(blob, name);
      return { name, bytes: blob.size, missing };
    });
  const print = () =>
    printing.start(async (signal, onProgress) => {
      const { printPages } = await import('./printPages');
      await printPages({ session, darkroom, signal, onProgress });
    });
  const isSaving = work.state.is === 'working';
  const isPrinting = printing.state.is === 'working';
  return (
    <>
      <div className="row">
        <Do main isPending={isSaving} isDisabled={isEmpty || isPrinting} onPress={save}>
          {said.savePdf}
        </Do>
        <Do isPending={isPrinting} isDisabled={isEmpty || isSaving} onPress={print}>
          {said.print}
        </Do>
      </div>
      <p className="slip-note">{said.pdfNote}</p>
      <WorkBar
        work={work}
        done={({ name, bytes, missing }) =>
          said.pdfSaved(name, (bytes / 1e6).toFixed(1), missing.join(' '))
        }
        failed={said.pdfFailed}
      />
      <WorkBar work={printing} done={() => said.printed} failed={said.printFailed} />
    </>
  );
}
