/** A PDF as an outside reader finds it: its tags with their text, its links, its labels. Nothing of ours reads it. */
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface ReadTag {
  readonly role: string;
  readonly alt: string;
  /** Its own text and that of its children, in reading order. */
  readonly text: string;
  readonly children: readonly ReadTag[];
}

export interface ReadLink {
  readonly says: string;
  /** Page the link leads to, from 1. */
  readonly to: number;
}

export interface ReadPage {
  readonly number: number;
  readonly tags: readonly ReadTag[];
  readonly links: readonly ReadLink[];
  /** Text that is neither in the structure nor marked as furniture. */
  readonly stray: string;
  /** Text marked as furniture of the page. */
  readonly furniture: string;
}

export interface ReadPdf {
  readonly pages: readonly ReadPage[];
  readonly labels: readonly string[];
  readonly bookmarks: readonly string[];
  readonly marked: boolean;
  readonly language: string;
  readonly title: string;
}

interface StructNode {
  readonly role: string;
  readonly alt?: string;
  readonly children: readonly (StructNode | { readonly type: string; readonly id: string })[];
}

/** Stands for the identifier that furniture has none of. */
const FURNITURE = '';

const spaced = (text: string): string => text.replace(/\s+/g, ' ').trim();

function readTag(node: StructNode, texts: ReadonlyMap<string, string>): ReadTag {
  const children: ReadTag[] = [];
  let text = '';
  for (const child of node.children) {
    if ('role' in child) {
      const read = readTag(child, texts);
      children.push(read);
      text += ` ${read.text}`;
    } else text += ` ${texts.get(child.id) ?? ''}`;
  }
  return { role: node.role, alt: node.alt ?? '', text: spaced(text), children };
}

export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const task = getDocument({ data: bytes.slice(), verbosity: 0, useSystemFonts: false });
  const pdf = await task.promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const page = await pdf.getPage(number);
    const texts = new Map<string, string>();
    const open: (string | undefined)[] = [];
    let stray = '';
    let furniture = '';
    for (const item of (await page.getTextContent({ includeMarkedContent: true })).items) {
      if ('str' in item) {
        const id = open.at(-1);
        const text = item.hasEOL ? `${item.str} ` : item.str;
        if (id === undefined) stray += text;
        else if (id === FURNITURE) furniture += text;
        else texts.set(id, `${texts.get(id) ?? ''}${text}`);
      } else if (item.type === 'endMarkedContent') open.pop();
      else open.push(item.id ?? ('tag' in item && item.tag === 'Artifact' ? FURNITURE : undefined));
    }
    const tree: StructNode | null = await page.getStructTree();
    const links = (await page.getAnnotations()).filter((one) => one.subtype === 'Link');
    pages.push({
      number,
      tags: tree ? tree.children.flatMap((child) => ('role' in child ? [readTag(child, texts)] : [])) : [],
      links: await Promise.all(
        links.map(async (link): Promise<ReadLink> => {
          const target = await pdf.getDestination(link.dest);
          const to = target ? (await pdf.getPageIndex(target[0])) + 1 : 0;
          return { says: spaced(link.contentsObj?.str ?? ''), to };
        }),
      ),
      stray: stray.trim(),
      furniture: spaced(furniture),
    });
  }
  const { info } = await pdf.getMetadata();
  const title = 'Title' in info && typeof info.Title === 'string' ? info.Title : '';
  const language = 'Language' in info && typeof info.Language === 'string' ? info.Language : '';
  const read: ReadPdf = {
    pages,
    labels: (await pdf.getPageLabels()) ?? [],
    bookmarks: ((await pdf.getOutline()) ?? []).map((one) => spaced(one.title)),
    marked: (await pdf.getMarkInfo())?.Marked ?? false,
    language,
    title,
  };
  await task.destroy();
  return read;
}

/** Every tag of a role, in reading order, however deep. */
export function tagsOf(tags: readonly ReadTag[], role: string): readonly ReadTag[] {
  return tags.flatMap((tag) => [...(tag.role === role ? [tag] : []), ...tagsOf(tag.children, role)]);
}
