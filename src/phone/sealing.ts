/** The script that knows of seals, fetched only where there are any: opens a booklet, and seals marks on their way to the studio. */
import './fill-gaps.js';
import { sealMarks } from '../publish/seal-marks.js';
import { openSealed } from './open-sealed.js';
import { offerPart } from './parts.js';

offerPart('open sealed', openSealed);
offerPart('seal marks', sealMarks);
