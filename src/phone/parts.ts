/**
 * Scripts that come after the page: in a folder each is a file that is asked for, in a page of its own they stand in it.
 * Either way one offers what it has by name, and another waits for it.
 */
type Part = 'plan again' | 'open sealed' | 'seal marks';

declare global {
  interface Window {
    chalkleaf?: { offered: Record<string, unknown>; waiting: Record<string, ((part: unknown) => void)[]> };
  }
}

function parts(): NonNullable<Window['chalkleaf']> {
  window.chalkleaf ??= { offered: {}, waiting: {} };
  return window.chalkleaf;
}

export function offerPart(name: Part, part: unknown): void {
  const { offered, waiting } = parts();
  offered[name] = part;
  for (const told of waiting[name] ?? []) told(part);
}

/** Never resolves where it does not come: nothing may hang on it. */
export const takePart = (name: Part): Promise<unknown> =>
  new Promise((done) => {
    const { offered, waiting } = parts();
    if (name in offered) done(offered[name]);
    else waiting[name] = [...(waiting[name] ?? []), done];
  });

/** Asks for a script of the folder, once; in a page of its own it stands there already. */
export function askForScript(address: string): void {
  if (document.documentElement.dataset.payload === undefined) return;
  if (document.head.querySelector(`script[src="${address}"]`) !== null) return;
  const script = document.createElement('script');
  script.src = address;
  document.head.append(script);
}
