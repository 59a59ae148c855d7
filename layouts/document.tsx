/** The outermost frame of every page: head, policy, style, script, and one main landmark. */
export interface DocumentProps {
  readonly title: string;
  readonly language: string;
  readonly direction: 'ltr' | 'rtl';
  readonly policy: string;
  /** May search engines list it? Only the public library. */
  readonly listed?: true;
  /** Style set in the page, each named by its digest in the policy. */
  readonly styles: readonly string[];
  /** Relative addresses of style files. */
  readonly styleFiles: readonly string[];
  /** Set in the page's head, in order. */
  readonly scripts: readonly string[];
  /** Relative addresses of script files, run when the page has been read. */
  readonly scriptFiles?: readonly string[];
  /** What a search engine or a preview is told. */
  readonly told?: PageTold;
  /** Can be put on a home screen: addresses of what it is called and looks like there. */
  readonly onHomeScreen?: { readonly manifest: string; readonly icon: string; readonly touchIcon: string };
  /** Where the shell finds the client's part; absent where it stands in the page. */
  readonly payload?: string;
  /** HTML that is already safe. */
  readonly body: string;
}

/** A page as others speak of it. Whole addresses are known only where the page's own is. */
export interface PageTold {
  readonly description: string;
  readonly kind: 'website' | 'article';
  readonly site: string;
  /** The page's own whole address. */
  readonly canonical?: string;
  /** Whole address of the feed. */
  readonly feed?: { readonly address: string; readonly title: string };
  readonly picture?: PictureTold;
  /** JSON-LD, with nothing in it that could end its element. */
  readonly data: string;
}

/** A picture by which a page is shown elsewhere: in points, and what is to be seen. */
export interface PictureTold {
  /** Its whole address. */
  readonly address: string;
  readonly width: number;
  readonly height: number;
  readonly alternative: string;
}

/** In the words of the Open Graph protocol (ogp.me), in the order it asks for: a picture, then what is said of it. */
const ToldPicture = ({ address, width, height, alternative }: PictureTold) => (
  <>
    <meta property="og:image" content={address} />
    <meta property="og:image:width" content={String(width)} />
    <meta property="og:image:height" content={String(height)} />
    <meta property="og:image:alt" content={alternative} />
  </>
);

function Told({ title, of }: { readonly title: string; readonly of: PageTold }) {
  return (
    <>
      <meta name="description" content={of.description} />
      <meta property="og:title" content={title} />
      <meta property="og:description" content={of.description} />
      <meta property="og:type" content={of.kind} />
      <meta property="og:site_name" content={of.site} />
      {of.canonical === undefined ? null : <link rel="canonical" href={of.canonical} />}
      {of.canonical === undefined ? null : <meta property="og:url" content={of.canonical} />}
      {of.feed === undefined ? null : (
        <link rel="alternate" type="application/atom+xml" href={of.feed.address} title={of.feed.title} />
      )}
      {of.picture === undefined ? null : <ToldPicture {...of.picture} />}
      <script type="application/ld+json" dangerouslySetInnerHTML={inside(of.data)} />
    </>
  );
}

const inside = (text: string) => ({ __html: text });

export function Document(props: DocumentProps) {
  return (
    <html lang={props.language} dir={props.direction} data-payload={props.payload}>
      <head>
        <meta charset="utf-8" />
        <meta http-equiv="Content-Security-Policy" content={props.policy} />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="referrer" content="no-referrer" />
        {props.listed ? null : <meta name="robots" content="noindex, nofollow" />}
        <meta name="format-detection" content="telephone=no" />
        <link rel="icon" href={props.onHomeScreen?.icon ?? 'data:,'} />
        {props.onHomeScreen ? <link rel="manifest" href={props.onHomeScreen.manifest} /> : null}
        {props.onHomeScreen ? <link rel="apple-touch-icon" href={props.onHomeScreen.touchIcon} /> : null}
        <title>{props.title}</title>
        {props.styleFiles.map((file) => (
          <link rel="stylesheet" href={file} />
        ))}
        {props.styles.map((text) => (
          <style dangerouslySetInnerHTML={inside(text)} />
        ))}
        {props.scripts.map((text) => (
          <script dangerouslySetInnerHTML={inside(text)} />
        ))}
        {props.scriptFiles?.map((file) => (
          <script src={file} defer />
        ))}
        {props.told === undefined ? null : <Told title={props.title} of={props.told} />}
      </head>
      <body>
        <main id="booklet" dangerouslySetInnerHTML={inside(props.body)} />
      </body>
    </html>
  );
}
