/**
 * A page held like a phone that nothing but these few lines listens to. The driver of other tests keeps a copy of every answer a page
 * gets, and reads it as text in the page's own thread: a booklet's takes it longer than a screen takes to draw, and was counted as the
 * booklet's.
 */
import type { Browser } from 'playwright-core';

/** As Chromium's own tools set them: milliseconds there and back, bytes a second, and how many times slower the processor. */
export interface Slowness {
  readonly latency: number;
  readonly downloadThroughput: number;
  readonly uploadThroughput: number;
  readonly processor: number;
}

const isText = (value: unknown): value is string => typeof value === 'string';

/** Opens `address` with `script` before the page's own, and resolves with the text the page gives to `window.tell`. */
export async function askPage(browser: Browser, address: string, script: string, slow: Slowness): Promise<string> {
  const root = await browser.newBrowserCDPSession();
  const { browserContextId } = await root.send('Target.createBrowserContext');
  try {
    const { targetId } = await root.send('Target.createTarget', { url: 'about:blank', browserContextId });
    const { sessionId } = await root.send('Target.attachToTarget', { targetId, flatten: false });
    const answered = new Map<unknown, () => void>();
    const told = new Promise<string>((done, fail) => {
      root.on('Target.receivedMessageFromTarget', ({ message }) => {
        const { id, error, method, params } = JSON.parse(message);
        if (error !== undefined) fail(new Error(message));
        answered.get(id)?.();
        if (method === 'Runtime.bindingCalled' && isText(params.payload)) done(params.payload);
      });
    });
    let last = 0;
    const send = async (method: string, params: object = {}): Promise<void> => {
      last += 1;
      const id = last;
      const came = new Promise<void>((done) => answered.set(id, done));
      await root.send('Target.sendMessageToTarget', { sessionId, message: JSON.stringify({ id, method, params }) });
      // What is refused ends the measuring.
      await Promise.race([came, told]);
    };
    const { processor, ...network } = slow;
    await send('Page.enable');
    await send('Runtime.enable');
    await send('Runtime.addBinding', { name: 'tell' });
    await send('Network.enable', { maxTotalBufferSize: 0, maxResourceBufferSize: 0 });
    await send('Network.emulateNetworkConditions', { offline: false, ...network });
    await send('Emulation.setDeviceMetricsOverride', { width: 360, height: 640, deviceScaleFactor: 2, mobile: true });
    await send('Emulation.setTouchEmulationEnabled', { enabled: true });
    await send('Emulation.setEmulatedMedia', { features: [{ name: 'prefers-reduced-motion', value: 'reduce' }] });
    await send('Emulation.setCPUThrottlingRate', { rate: processor });
    await send('Page.addScriptToEvaluateOnNewDocument', { source: script });
    await send('Page.navigate', { url: address });
    return await told;
  } finally {
    await root.send('Target.disposeBrowserContext', { browserContextId });
    await root.detach();
  }
}
