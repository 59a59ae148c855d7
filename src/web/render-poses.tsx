/** The author's sheets of positions: each a page of its own that needs no other file. */
import { renderToString } from 'preact-render-to-string';
import { PoseIndexPage, PoseSheetPage } from '../../layouts/pose-sheet.js';
import type { PoseSheet } from '../model/pose-sheet.js';
import { sheetPolicy } from './policy.js';
import type { WebSources } from './prepare-shell.js';
import { renderPage } from './render-page.js';
import { hashSource } from './shell-parts.js';

export interface PoseFile {
  readonly path: string;
  readonly text: string;
}

const POSE_INDEX = 'index.html';

const fileOf = ({ exercise }: PoseSheet): string => `${exercise}.html`;

/** A page for each sheet; with `whole` also the contact sheet that leads to all of them. */
export async function renderPoses(
  sheets: readonly PoseSheet[],
  whole: boolean,
  { readLayout }: Pick<WebSources, 'readLayout'>,
): Promise<readonly PoseFile[]> {
  const read = async (name: string): Promise<string> => new TextDecoder().decode(await readLayout(name));
  const text = `${await read('figure.css')}\n${await read('pose-sheet.css')}`;
  const style = { text, source: await hashSource(text) };
  const page = (path: string, title: string, body: string): PoseFile => ({
    path,
    text: renderPage({
      title,
      language: 'en',
      direction: 'ltr',
      policy: sheetPolicy([style]),
      styles: [style.text],
      styleFiles: [],
      scripts: [],
      body,
    }),
  });
  const index = whole ? { index: POSE_INDEX } : {};
  return [
    ...(whole
      ? [page(POSE_INDEX, 'All positions', renderToString(<PoseIndexPage sheets={sheets} fileOf={fileOf} />))]
      : []),
    ...sheets.map((sheet) =>
      page(fileOf(sheet), sheet.name, renderToString(<PoseSheetPage sheet={sheet} {...index} />)),
    ),
  ];
}
