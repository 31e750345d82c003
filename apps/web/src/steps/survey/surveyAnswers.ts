/** What the worker answers for Survey. */
export const surveyAnswers = {};
