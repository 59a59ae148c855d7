import { drawLibrary } from './dist/src/figures/draw-library.js';
import { readFolder } from './dist/src/content/read-folder.js';
import { gatherFiles } from './dist/src/app/gather-files.js';
import { createHash } from 'node:crypto';
const g=await gatherFiles('content'); const {value}=readFolder(g.value);
const t=process.cpuUsage();
const d=drawLibrary(value.library.exercises ?? value.library);
let out; try{ out=d instanceof Map?[...d]:d; if (typeof d==='function') out=value.library.exercises.map(e=>d(e)); }catch(e){out=String(e)}
const u=process.cpuUsage(t);
console.log(u.user/1e6, createHash('sha1').update(JSON.stringify(out)).digest('hex'), JSON.stringify(out).length);
