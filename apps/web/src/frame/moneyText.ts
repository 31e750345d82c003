/** A price with its currency, as the reader's own language writes it. */
export function moneyText(price: number, currency: string): string {
  try {
    return new Intl.NumberFormat([], { style: "currency", currency }).format(price);
  } catch {
    return `${price.toFixed(2)} ${currency}`;
  }
}
