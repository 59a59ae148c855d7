/** Sentences for what is wrong in a table of poses, and with the body drawn from it. */
import type { PoseColumn } from '../../model/pose.js';
import type { ContentProblems } from '../../model/problems-content.js';
import type { FigureProblems } from '../../model/problems-figures.js';
import { quoted, type Sayings } from './said.js';

const WRITE: Readonly<Record<PoseColumn, string>> = {
  Position: 'a name, such as start or bottom',
  View: 'side, half, front, back or above',
  On: 'feet, left foot, toes, heels, insteps, knees, hands, forearms, elbows, seat, back, shoulders, belly, hips, forehead, left side; with: on step; or: moving',
  Feet: 'apart 40; left ahead 60; right back 80; right out 70 (centimetres)',
  Trunk:
    'upright; lean 40; lean back 10; face up; face down; left side down; bend 20; arch 10; side bend left 15; turn right 30',
  Head: 'look ahead, look up, look down; nod 20; lift 10; turn left 30',
  Hips: '90; back 15; out 30; across 10; turned out 20; any of them after left or right',
  Knees: '90; straight; left 20, right 110',
  Ankles: '15; point 40; either after left or right',
  Shoulders: '90; back 20; out 60; across 10; turned in 40; any of them after left or right',
  Elbows: '90; straight; left 20, right 110',
  Hands:
    'up, ahead, down, out; chest, shoulder, ribs, belly, hip, head, thigh, knee, shin, floor, bell; any after left or right; both by right ear, both behind neck',
  Kit: 'bell in both hands; bell in right hand; bell upside down in both hands; dumbbell in each hand; bell on the floor ahead 30; bar in both hands; bar across the back; band from feet to hands, band from right foot to right hand; chair behind 30; chair turned; step 20 high ahead 30; wall ahead 60; mat; none',
};

type ReadCodes = Extract<keyof ContentProblems, `pose-${string}`>;

export const poseSayings: Sayings<Pick<ContentProblems, ReadCodes> & FigureProblems> = {
  'pose-unreadable': ({ text, column }) => ({
    message: `${quoted(text)} cannot stand under ${column}.`,
    hint: WRITE[column],
  }),
  'pose-twice': ({ position }) => ({
    message: `Two positions are called ${quoted(position)}.`,
    hint: 'a name of its own for each, in the order of the movement',
  }),
  'pose-alone': () => ({
    message: 'One position shows no movement.',
    hint: 'a second row: where it starts, and where it ends',
  }),
  'pose-joint-beyond': ({ position, side, motion, degrees, most }) => ({
    message: `In ${quoted(position)} the ${side === undefined ? motion : `${side} ${motion}`} is ${degrees}°; most people have ${most}° at the very most.`,
    hint: 'a smaller angle, or leave the joint out and say where the feet and hands are',
  }),
  'pose-not-reaching': ({ position, part, to, millimetres }) => ({
    message: `In ${quoted(position)} the ${part} ends ${millimetres} mm away from the ${to}.`,
    hint: 'angles that let it get there, or leave some of them out',
  }),
  'pose-through': ({ position, part, on, millimetres }) => ({
    message: `In ${quoted(position)} the ${part} is ${millimetres} mm ${on === 'floor' ? 'below' : 'inside'} the ${on}.`,
    hint: 'say what it rests on under On, or bend something more',
  }),
  'pose-falls': ({ position, way, millimetres }) => ({
    message: `In ${quoted(position)} the figure would fall ${way}: its weight is ${millimetres} mm outside what bears it.`,
    hint: 'leave the trunk, the hips or the ankles out so that it finds its balance, or write moving under On',
  }),
  'pose-not-deep': ({ position, text, wanted, millimetres }) => ({
    message: `${quoted(text)} asks for the hip ${wanted} the knee, and in ${quoted(position)} it is ${millimetres} mm above.`,
    hint: 'a greater angle under Knees',
  }),
  'pose-bent': ({ position, limb, side, text, degrees }) => ({
    message: `${quoted(text)} asks for a straight ${limb}, and in ${quoted(position)} the ${side} one is bent by ${degrees}°.`,
    hint: limb === 'arm' ? 'straight under Elbows' : 'straight under Knees',
  }),
  'pose-against-itself': ({ position, what, said, drawn }) => ({
    message: `In ${quoted(position)} the ${what} is said to be ${said}° and comes out at ${drawn}°.`,
    hint: 'the angle as it is drawn, or leave out what stands against it in the same row',
  }),
};
