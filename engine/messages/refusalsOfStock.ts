/** Refusals of a shop's price list. */
export const refusalsOfStock = {
  "stock-too-large": {
    message: "The list is larger than the {limitMB} MB this program reads.",
    remedy: "Keep the rows that have to do with wiring and leave the rest out.",
  },
  "stock-too-many": {
    message: "The list has more than {limitCount} rows.",
    remedy: "Keep the rows that have to do with wiring and leave the rest out.",
  },
  "stock-empty": {
    message: "The list has no row below its headings.",
    remedy: "Write one row for each thing the shop sells.",
  },
  "stock-quote": {
    message: "A quotation mark is opened and not closed, or stands inside a cell that has none.",
    remedy: "Put the whole cell in quotation marks and write those inside it twice.",
  },
  "stock-heading-missing": {
    message: "The first line does not name the column {heading}.",
    remedy: "The first line must name: {headings}.",
  },
  "stock-heading-twice": {
    message: "The first line names the column {heading} twice.",
    remedy: "Keep one of them.",
  },
  "stock-cells": {
    message: "The line has {cellCount} cells, and the first line names {headingCount}.",
    remedy: "Put a cell that holds the separator in quotation marks, or fill the missing cell in.",
  },
  "stock-code": {
    message: "The line has no code to order by.",
    remedy: "Write the code the shop knows it by.",
  },
  "stock-code-twice": {
    message: "The code {found} already stands on line {firstLine}.",
    remedy: "Keep one of the two lines, or give them different codes.",
  },
  "stock-price": {
    message: "The price {found} is no amount of money.",
    remedy: "Write a number such as 12.50, with nothing between thousands.",
  },
  "stock-pack": {
    message: "The pack {found} is not how much is sold together.",
    remedy: "Write a number above nought: pieces for each, metres for m and reel. Empty means 1.",
  },
  "stock-amount": {
    message: "What is in stock, {found}, is neither a number of packs nor yes or no.",
    remedy: "Write whole packs, yes, no, or leave it empty where nobody knows.",
  },
  "stock-unit": {
    message: "{found} is not how a {kind} is sold.",
    remedy: "Write {units}.",
  },
  "stock-currency": {
    message: "{found} is no currency.",
    remedy: "Write its three letters, such as EUR.",
  },
  "stock-two-currencies": {
    message: "The list has prices in {found} and, on line {firstLine}, in {first}.",
    remedy: "Give prices in one currency: this program knows no rates.",
  },
} as const;
