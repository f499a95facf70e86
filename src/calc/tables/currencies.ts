/** Currencies whose amounts have other digits behind the point than cents, by their codes and the signs beside amounts. */
export interface MinorUnit {
  readonly digits: number;
  readonly codes: readonly string[];
  /** What stands beside an amount in place of a code (Unicode CLDR, English). */
  readonly signs: readonly string[];
}

/** Source: ISO 4217, list one, column minor unit; units of account that nobody is paid in are left out. */
export const MINOR_UNITS: readonly MinorUnit[] = [
  {
    digits: 0,
    codes: "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF".split(" "),
    signs: ["¥", "₩", "₫", "FCFA", "F\u202fCFA", "CFPF"],
  },
  { digits: 3, codes: "BHD IQD JOD KWD LYD OMR TND".split(" "), signs: [] },
];

/** Codes of the currencies that people pay in. Source: ISO 4217, list one, without funds, metals and tests (from memory). */
export const CURRENCY_CODES: readonly string[] = (
  "AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BGN BHD BIF BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CLP CNY " +
  "COP CRC CUP CVE CZK DJF DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GNF GTQ GYD HKD HNL HTG HUF IDR ILS " +
  "INR IQD IRR ISK JMD JOD JPY KES KGS KHR KMF KPW KRW KWD KYD KZT LAK LBP LKR LRD LSL LYD MAD MDL MGA MKD MMK MNT MOP " +
  "MRU MUR MVR MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD OMR PAB PEN PGK PHP PKR PLN PYG QAR RON RSD RUB RWF SAR SBD SCR " +
  "SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TND TOP TRY TTD TWD TZS UAH UGX USD UYU UZS VED VES VND " +
  "VUV WST XAF XCD XCG XOF XPF YER ZAR ZMW ZWG"
).split(" ");
