/** The door to markdown-it: CommonMark with tables, no HTML; links and pictures say where in their text they stand. */
import MarkdownIt from 'markdown-it';

type Markdown = InstanceType<typeof MarkdownIt>;
export type Token = ReturnType<Markdown['parse']>[number];
type InlineRule = Parameters<Markdown['inline']['ruler']['at']>[1];

export interface Span {
  readonly start: number;
  readonly end: number;
}

const spans = new WeakMap<object, Span>();

/** Where in the text of its block a link or picture stands, in UTF-16 units. */
export const spanOf = (token: Token): Span | undefined => spans.get(token);

export const parseTokens = (text: string): readonly Token[] => markdown.parse(text, {});

const markdown = makeMarkdown();

function makeMarkdown(): Markdown {
  const md = new MarkdownIt({ html: false, linkify: false, typographer: false });
  // Targets are kept as the author wrote them; `content` says which are allowed.
  md.normalizeLink = (target) => target;
  md.validateLink = () => true;
  for (const name of ['link', 'image'] as const) {
    const rule = ruleNamed(name);
    if (rule) md.inline.ruler.at(name, withSpan(rule));
  }
  return md;
}

/** markdown-it's own rule of this name. */
function ruleNamed(name: string): InlineRule | undefined {
  const alone = new MarkdownIt();
  alone.inline.ruler.enableOnly([name]);
  return alone.inline.ruler.getRules('')[0];
}

function withSpan(rule: InlineRule): InlineRule {
  return (state, silent) => {
    const start = state.pos;
    const before = state.tokens.length;
    const matched = rule(state, silent);
    if (matched && !silent) {
      const token = state.tokens.slice(before).find(({ type }) => type === 'link_open' || type === 'image');
      if (token) spans.set(token, { start, end: state.pos });
    }
    return matched;
  };
}
