/** Refusals of one field: missing, misspelt, of the wrong sort or out of bounds. */
export const refusalsOfFields = {
  "field-missing": {
    message: '{place} lacks "{key}": {wanted} is wanted.',
    remedy: 'Add "{key}".',
  },
  "field-wrong-sort": {
    message: "{place} is {found}, where {wanted} is wanted.",
    remedy: "Write {wanted}.",
  },
  "field-quantity-as-text": {
    message: "{place} is the text {found}, where a number{inUnit} is wanted.",
    remedy: "{advice}",
  },
  "field-needs-basis": {
    message: "{place} is {found} alone; where it comes from must be said too.",
    remedy:
      'Write { "value": {example}, "basis": "measured" }; the basis is one of measured, estimated, chosen, stated.',
  },
  "field-below-bound": {
    message: "{place} is {found}; it cannot be less than {bound}{unit}.",
    remedy: "Write the value that was meant{inUnit}.",
  },
  "field-above-bound": {
    message: "{place} is {found}; it cannot be more than {bound}{unit}.",
    remedy: "Write the value that was meant{inUnit}.",
  },
  "field-not-whole": {
    message: "{place} is {found}, where a whole number is wanted.",
    remedy: "Write a whole number.",
  },
  "field-text-too-long": {
    message: "{place} has {lengthCount} characters; at most {bound} are kept.",
    remedy: "Shorten it.",
  },
  "field-text-too-short": {
    message: "{place} is empty.",
    remedy: "Write something.",
  },
  "field-too-few-items": {
    message: "{place} has {itemCount} items; at least {bound} are wanted.",
    remedy: "Add what is missing.",
  },
  "field-too-many-items": {
    message: "{place} has {itemCount} items; at most {bound} are read.",
    remedy: "Take some away.",
  },
  "field-not-a-choice": {
    message: "{place} is {found}; it is one of {choices}.",
    remedy: "{suggestion}",
  },
  "field-bad-form": {
    message: "{place} is {found}, and {wanted}.",
    remedy: "Write it in that form.",
  },
  "field-unknown": {
    message: '{place} has a field "{key}" that means nothing here.',
    remedy: "{suggestion}",
  },
  "field-bad-name": {
    message: "{place} is keyed by {found}, and {wanted}.",
    remedy: "Use the id of what is meant.",
  },
  "item-too-large": {
    message: "{place} holds more than {limitCount} values, far more than any one thing of a job.",
    remedy: "Split it into several.",
  },
  "field-other": {
    message: "{place} cannot be read: {wanted}.",
    remedy: "Mend the value.",
  },
} as const;
