/**
 * The certificate with which the pages are served to Excel from this machine: made once, and kept where installing packages anew does
 * not throw it away, because it has to be trusted by hand.
 */
import { X509Certificate } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { generate } from "selfsigned";

const day = 86_400_000;
/** A year: browsers of Apple's trust none that lasts longer than 398 days. */
const lasts = 365 * day;
/** It is made anew before anybody meets an old one. */
const renewedBefore = 14 * day;

/** It speaks for this machine alone and can vouch for no other certificate, whoever gets hold of its key. */
const extensions = [
  { name: "basicConstraints", cA: false },
  { name: "keyUsage", digitalSignature: true, keyEncipherment: true },
  { name: "extKeyUsage", serverAuth: true },
  {
    name: "subjectAltName",
    altNames: [
      { type: 2, value: "localhost" },
      { type: 7, ip: "127.0.0.1" },
      { type: 7, ip: "::1" },
    ],
  },
];

const isGood = (file, now) => {
  const { validFrom, validTo } = new X509Certificate(readFileSync(file));
  return Date.parse(validFrom) <= now && now + renewedBefore < Date.parse(validTo);
};

/**
 * The files of the certificate and of its key in a folder, made there where there are none or they have almost run out.
 *
 * @param {string} folder
 * @returns {Promise<{ cert: string, key: string, isNew: boolean }>} their paths, and whether it has to be trusted first
 */
export async function certificateIn(folder, now = Date.now()) {
  const [cert, key] = [join(folder, "pennyacre-localhost.crt"), join(folder, "pennyacre-localhost.key")];
  if (existsSync(cert) && existsSync(key) && isGood(cert, now)) return { cert, key, isNew: false };
  const made = await generate([{ name: "commonName", value: "Pennyacre on this machine" }], {
    algorithm: "sha256",
    keySize: 2048,
    notBeforeDate: new Date(now - day),
    notAfterDate: new Date(now - day + lasts),
    extensions,
  });
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  writeFileSync(key, made.private, { mode: 0o600 });
  writeFileSync(cert, made.cert);
  return { cert, key, isNew: true };
}
