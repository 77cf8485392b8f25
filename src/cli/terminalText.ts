/** Text as it may go to a terminal: names come from files of anybody's, and a terminal obeys what it is sent. */

/** Signs that steer a terminal (all but the end of a line), and those that turn the direction of what follows. */
const steering = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069]/g;
/** A whole sequence: colours and movements, titles and links up to their end. */
const sequences =
  /(?:\u001b\[|\u009b)[0-?]*[ -/]*[@-~]|(?:\u001b\]|\u009d)[^\u0007\u001b\u009c]*(?:\u0007|\u001b\\|\u009c)?|\u001b[ -/]*[0-~]/g;

/** Lines for people: sequences go with all their letters, tabs become blanks. */
export const printed = (text: string): string => text.replace(/\t/g, " ").replace(sequences, "").replace(steering, "");

/** A name within a line: ends of lines go too, so that no name can write a line of its own. */
export const onOneLine = (text: string): string => printed(text.replace(/[\r\n\u2028\u2029]+/g, " "));

/** JSON for programs: the same value, with such signs spelled as JSON spells them. */
export const printedJson = (json: string): string =>
  json.replace(steering, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`);
