/** @import { Sums, Today } from "../types.js" */

/** The sums of a tank's days and of its fishes' weeks: a day's other findings and reasons would cost a page more than they tell it. @param {Today} today @returns {Sums} */
export const sumsOf = ({ days, fish }) => ({ days, fish: fish.map(({ id, weekDueKj, weekGotKj }) => ({ id, weekDueKj, weekGotKj })) });
