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
  /** Can be put on a home screen: addresses of what it is called and looks like there. */
  readonly onHomeScreen?: { readonly manifest: string; readonly icon: string; readonly touchIcon: string };
  /** Where the shell finds the client's part; absent where it stands in the page. */
  readonly payload?: string;
  /** HTML that is already safe. */
  readonly body: string;
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
      </head>
      <body>
        <main id="booklet" dangerouslySetInnerHTML={inside(props.body)} />
      </body>
    </html>
  );
}
