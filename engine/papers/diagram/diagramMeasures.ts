/** Sizes and distances of the whole diagram in the larger set, mm and ratios to the sheet's own symbols. */

export const SYMBOL_RATIO = 0.7;
export const CAVITY_RATIO = 0.6;
export const EARTH_RATIO = 0.6;
export const PART_HEIGHT_MM = 12.4;
export const CAVITY_HEIGHT_MM = 6;
/** From the line to the lettering at its right. */
export const WIRE_TEXT_MM = 1.9;
/** From the line to lettering that runs along it. */
export const TURNED_TEXT_MM = 0.9;
/** From the line to the names of pins at its left. */
export const PIN_TEXT_MM = 1;
export const WORDS_TEXT_MM = 1.8;
/** From the top of an earth sign to the lettering under it. */
export const EARTH_TEXT_MM = 6;
export const TERMINAL_TEXT_MM = 4;
export const RATING_WIDTH_MM = 11;
export const NAME_WIDTH_MM = 18;
export const CODE_WIDTH_MM = 8.6;
export const SLIM_WIDTH_MM = 15;
export const FOOT_LINES = 2;
export const LINE_PITCH_MM = 3.8;
