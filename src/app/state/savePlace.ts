/** Where a large file is written as it grows, in browsers that let a page do so. */

interface PickerOptions {
  readonly suggestedName: string;
  readonly types: readonly { description: string; accept: Readonly<Record<string, string[]>> }[];
}

declare global {
  interface Window {
    showSaveFilePicker?(options: PickerOptions): Promise<FileSystemFileHandle>;
  }
  interface FileSystemFileHandle {
    /** Not in every browser that has the picker. */
    remove?(): Promise<void>;
  }
}

export interface SavePlace {
  readonly name: string;
  readonly stream: FileSystemWritableFileStream;
  readonly size: () => Promise<number>;
  /** Drops what was written and takes the empty file away that choosing a place has left. */
  readonly leave: () => Promise<void>;
}

/**
 * Asks for a place; must be called on a press.
 * @returns null where the browser has no such picker, 'cancelled' when the person changed their mind.
 */
export async function askSavePlace(
  suggestedName: string,
  description: string,
  type: string,
): Promise<SavePlace | null | 'cancelled'> {
  if (!window.showSaveFilePicker) return null;
  const extension = suggestedName.slice(suggestedName.lastIndexOf('.'));
  try {
    const handle = await window.showSaveFilePicker({
      suggestedName,
      types: [{ description, accept: { [type]: [extension] } }],
    });
    const size = async () => (await handle.getFile()).size;
    const stream = await handle.createWritable();
    return {
      name: handle.name,
      stream,
      size,
      leave: async () => {
        // Whoever wrote into it may have dropped it already.
        await stream.abort().catch(() => undefined);
        if ((await size()) === 0) await handle.remove?.();
      },
    };
  } catch (error) {
    if ((error as Error).name === 'AbortError') return 'cancelled';
    throw error;
  }
}
