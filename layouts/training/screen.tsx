/** The screen that stands. A new kind of screen does not compile until it is drawn here. */
import type { Screen } from '../../src/model/training.js';
import { AroundView } from './around.js';
import { DifferentView } from './different.js';
import { EasierView } from './easier.js';
import { FinishedView, SendView } from './finished.js';
import { HomeView } from './home.js';
import { LetBeView } from './left-out.js';
import { MorningView } from './morning.js';
import { PainView } from './pain.js';
import { EffortView, LessView, ReserveView, TodayView } from './questions.js';
import { SetView } from './set.js';
import type { Shown } from './shown.js';
import { ThisPhoneView } from './this-phone.js';

export function ScreenView({ screen, shown }: { readonly screen: Screen; readonly shown: Shown }) {
  switch (screen.kind) {
    case 'home':
      return <HomeView screen={screen} shown={shown} />;
    case 'morning':
      return <MorningView screen={screen} shown={shown} />;
    case 'today':
      return <TodayView screen={screen} shown={shown} />;
    case 'let be':
      return <LetBeView screen={screen} shown={shown} />;
    case 'less':
      return <LessView screen={screen} shown={shown} />;
    case 'warm-up':
    case 'cool-down':
      return <AroundView screen={screen} shown={shown} />;
    case 'set':
      return <SetView screen={screen} shown={shown} />;
    case 'different':
      return <DifferentView key={screen.key} screen={screen} shown={shown} />;
    case 'easier':
      return <EasierView screen={screen} shown={shown} />;
    case 'reserve':
      return <ReserveView screen={screen} shown={shown} />;
    case 'pain':
      return <PainView screen={screen} shown={shown} />;
    case 'effort':
      return <EffortView screen={screen} shown={shown} />;
    case 'finished':
      return <FinishedView screen={screen} shown={shown} />;
    case 'send':
      return <SendView screen={screen} shown={shown} />;
    case 'this phone':
      return <ThisPhoneView screen={screen} shown={shown} />;
  }
}
