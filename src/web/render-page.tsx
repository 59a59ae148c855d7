/** One whole page as text, from the frame every page shares. */
import { renderToString } from 'preact-render-to-string';
import { Document, type DocumentProps } from '../../layouts/document.js';

export const renderPage = (document: DocumentProps): string =>
  `<!doctype html>\n${renderToString(<Document {...document} />)}\n`;
