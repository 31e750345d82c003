interface SyntaxWords {
  readonly fault: string;
  readonly advice: string;
}

const FAULTS: Readonly<Record<string, SyntaxWords>> = {
  InvalidSymbol: {
    fault: "a word or sign stands where a value is wanted",
    advice: 'Put text in "quotes"; the only bare words are true, false and null.',
  },
  InvalidNumberFormat: {
    fault: "a number is not complete",
    advice: "Write numbers as 12, 0.5 or -3e6: a full stop for the decimal, no leading noughts.",
  },
  PropertyNameExpected: {
    fault: "a field name in quotes is wanted here",
    advice: "Write the name in quotes, or take away the comma before the closing brace.",
  },
  ValueExpected: {
    fault: "a value is wanted here",
    advice: "Write the value, or take away the comma before the closing bracket.",
  },
  ColonExpected: {
    fault: "a colon is wanted after the field name",
    advice: "Put a colon between the name and its value.",
  },
  CommaExpected: {
    fault: "a comma is wanted between two items",
    advice: "Put a comma after the item before this place.",
  },
  CloseBraceExpected: {
    fault: "a closing brace } is missing",
    advice: "Close what was opened; the file may have been cut short.",
  },
  CloseBracketExpected: {
    fault: "a closing bracket ] is missing",
    advice: "Close what was opened; the file may have been cut short.",
  },
  EndOfFileExpected: {
    fault: "the document has ended and something still follows",
    advice: "Take away what follows the last brace.",
  },
  InvalidCommentToken: {
    fault: "a remark stands here, and JSON has none",
    advice: 'Move the remark into a "note" field.',
  },
  UnexpectedEndOfString: {
    fault: "a text is not closed",
    advice: "Close it with a quote on the same line.",
  },
  UnexpectedEndOfNumber: {
    fault: "a number is not complete",
    advice: "Write numbers as 12, 0.5 or -3e6, with a figure after the full stop.",
  },
  InvalidUnicode: {
    fault: "a \\u in a text is not followed by four figures",
    advice: "Write \\u and four of 0-9 a-f, or the letter itself.",
  },
  InvalidEscapeCharacter: {
    fault: "a \\ in a text stands before a letter that means nothing",
    advice: "Write \\\\ for a backslash.",
  },
  InvalidCharacter: {
    fault: "a control character stands in a text",
    advice: "Write \\t for a tab and \\n for a new line.",
  },
};

/** A parser's error, by its name, in words a person can act on. */
export function syntaxFault(name: string): SyntaxWords {
  return FAULTS[name] ?? { fault: "something is out of place", advice: "Mend this line." };
}
