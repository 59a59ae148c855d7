/** An exercise's drawing as one SVG file, to be painted for wherever its page is spoken of elsewhere. */
import { renderToString } from 'preact-render-to-string';
import { PreviewDrawing } from '../../layouts/preview.js';
import type { Drawing } from '../model/picture.js';

export const renderPreview = (drawing: Drawing): string => renderToString(<PreviewDrawing drawing={drawing} />);
