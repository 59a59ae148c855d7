/** A line of text in PDF operators. Words come shaped; here they get the numbers of the glyphs that a document embeds. */
import { type Format, sizeOf } from './format.js';
import type { OpenFace } from './load-faces.js';
import { number } from './operators.js';
import type { TextBox } from './page.js';
import type { ShapedWord } from './shape-words.js';

/** U+FFFD, the replacement character. */
const NO_LETTER = 0xfffd;

const THOUSAND = 1000;

/** A booklet's larger pages, and the draft beside it, have the same glyphs as its pages: they are cut out of a face once. */
const cutOut = new WeakMap<OpenFace, Map<string, Uint8Array>>();
/** Of each face: more are never wanted again. */
const MOST_CUT = 4;

function remember({ subset }: PDFKit.FontInUse, face: OpenFace): void {
  const known = cutOut.get(face) ?? new Map<string, Uint8Array>();
  cutOut.set(face, known);
  const cut = subset.encode.bind(subset);
  subset.encode = () => {
    const key = subset.glyphs.join(' ');
    const before = known.get(key);
    if (before) return before;
    const bytes = cut();
    const [oldest] = known.keys();
    if (oldest !== undefined && known.size >= MOST_CUT) known.delete(oldest);
    known.set(key, bytes);
    return bytes;
  };
}

/** A face as one document embeds it: only glyphs that are drawn, numbered in the order they come up. */
export class EmbeddedFace {
  readonly #inUse: PDFKit.FontInUse;
  readonly #face: OpenFace;
  /** To thousandths of the size. */
  readonly #scale: number;
  /** What stands between the brackets of a run. */
  readonly #shown = new Map<ShapedWord, string>();

  constructor(inUse: PDFKit.FontInUse, face: OpenFace) {
    this.#inUse = inUse;
    this.#face = face;
    this.#scale = THOUSAND / face.unitsPerEm;
    remember(inUse, face);
    // What stands for a letter that is missing means no letter; as U+0000 a reader could not say so.
    inUse.unicode[0] = [NO_LETTER];
  }

  /** Of a page that names its faces. */
  nameOn(page: { readonly fonts: Record<string, unknown> }): void {
    page.fonts[this.#inUse.id] ??= this.#inUse.ref();
  }

  #glyphs({ glyphs }: ShapedWord): readonly string[] {
    const { subset, widths, unicode } = this.#inUse;
    return glyphs.map((glyph) => {
      const own = subset.includeGlyph(glyph.id);
      widths[own] ??= glyph.advanceWidth * this.#scale;
      unicode[own] ??= glyph.codePoints;
      return own.toString(16).padStart(4, '0');
    });
  }

  /** Glyphs, with kerning between them where the face asks for it; a word's own can be said one after the other. */
  #show(word: ShapedWord): string {
    const known = this.#shown.get(word);
    if (known !== undefined) return known;
    const shown = this.#glyphs(word)
      .map((glyph, i) => {
        const [position, { advanceWidth } = { advanceWidth: 0 }] = [word.positions[i], word.glyphs[i]];
        const kern = position ? position.xAdvance * this.#scale - advanceWidth * this.#scale : 0;
        return kern === 0 ? glyph : `${glyph}>${number(-kern)}<`;
      })
      .join('');
    this.#shown.set(word, shown);
    return shown;
  }

  /** Marks that a face places apart, one glyph at a time; everything else in one go. */
  operators(box: TextBox, format: Format): string {
    const size = sizeOf(format, box.style);
    const words = this.#face.wordsOf(box.endsAtSpace ? `${box.text} ` : box.text);
    const start = `BT /${this.#inUse.id} ${number(size)} Tf`;
    if (words.every(({ inLine }) => inLine)) {
      const shown = words.map((word) => this.#show(word)).join('');
      const runs = shown.endsWith('<') ? shown.slice(0, -1) : `${shown}>`;
      return `${start} ${at(box.x, box.y)} [${shown === '' ? '' : `<${runs}`}] TJ ET`;
    }
    const scale = (size / THOUSAND) * this.#scale;
    let x = box.x;
    const each = words.flatMap((word) =>
      this.#glyphs(word).map((glyph, i) => {
        const position = word.positions[i];
        const shown = `${at(x + (position?.xOffset ?? 0) * scale, box.y - (position?.yOffset ?? 0) * scale)} <${glyph}> Tj`;
        x += (position?.xAdvance ?? 0) * scale;
        return shown;
      }),
    );
    return `${start} ${each.join(' ')} ET`;
  }
}

const at = (x: number, y: number): string => `1 0 0 -1 ${number(x)} ${number(y)} Tm`;
