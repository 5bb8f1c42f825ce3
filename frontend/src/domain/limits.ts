/** How many characters the studio takes, where more than one screen asks. */
export const CAUSE_MOST = 40;
/** Why, and a word to it. */
export const REASON_MOST = 200;
/** What a thing is. */
export const THING_MOST = 120;
