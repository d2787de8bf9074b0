// Drives a real browser through the pages: node run.mjs PROGRAM BROWSER. Start at the list below; each part has a file.
import { access } from "./access.mjs";
import { begin, told } from "./kit.mjs";
import { byHand } from "./by_hand.mjs";
import { cards } from "./cards.mjs";
import { demo } from "./demo.mjs";
import { live } from "./live.mjs";
import { onPaper } from "./on_paper.mjs";
import { printed } from "./print.mjs";
import { shape } from "./shape.mjs";
import { wall } from "./wall.mjs";

const [program, browser] = process.argv.slice(2);
// All of it takes a minute or two, most of it axe-core's; a run that hangs ends here, milliseconds.
const bound = setTimeout(() => {
  console.log("FAILED: the checks did not end within 480 s");
  process.exit(1);
}, 480_000);
const house = await begin(program, browser);
const places = await byHand(house);
await cards(house, places);
await live(house, places);
await shape(house, places);
await wall(house, places);
await access(house, places);
await demo(house);
await onPaper(house);
await printed(house);
await house.end();
clearTimeout(bound);
process.exit(told());
