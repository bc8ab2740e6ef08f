// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QCryptographicHash>
#include <QString>
#include <filesystem>
#include <string>
#include <utility>
#include <vector>

#include "support/recordfolder.h"

/// Looks for planted words in files, in every form in which a word could be written there.
namespace support {

/// Gathers what the program logs.
class Logged {
  public:
    Logged() {
        text().clear();
        m_before =
            qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString& line) {
                text() += line.toStdString() + '\n';
            });
    }
    ~Logged() { qInstallMessageHandler(m_before); }
    static std::string& text() {
        static std::string gathered;
        return gathered;
    }

  private:
    QtMessageHandler m_before;
};

using Written = std::pair<std::string, std::string>;  ///< the form's name, and its bytes

inline void addHashes(std::vector<Written>& ways, const QByteArray& word) {
    const std::pair<const char*, QCryptographicHash::Algorithm> kinds[] = {
        {"SHA-256", QCryptographicHash::Sha256},
        {"SHA-1", QCryptographicHash::Sha1},
        {"MD5", QCryptographicHash::Md5}};
    for (const auto& [name, kind] : kinds) {
        const QByteArray hash = QCryptographicHash::hash(word, kind);
        for (const auto& [form, bytes] :
             {std::pair(" as bytes", hash),
              {" in hex", hash.toHex()},
              {" in HEX", hash.toHex().toUpper()},
              {" in base 64", hash.toBase64().chopped(2)},
              {" in base 64 for addresses",
               hash.toBase64(QByteArray::Base64UrlEncoding).chopped(2)}})
            ways.emplace_back(std::string(name) + form, bytes.toStdString());
    }
}

/// Each way in which a word could be readable.
inline std::vector<Written> waysToWrite(const std::string& word) {
    const QByteArray utf8 = QByteArray::fromStdString(word);
    const QString text = QString::fromUtf8(utf8);
    std::vector<Written> ways = {
        {"UTF-8", word},
        {"UTF-8, lower case", text.toLower().toStdString()},
        {"UTF-16", std::string(reinterpret_cast<const char*>(text.utf16()), 2 * text.size())},
        {"hex", utf8.toHex().toStdString()},
        {"HEX", utf8.toHex().toUpper().toStdString()}};
    std::string bigEnd = ways[2].second;
    for (std::size_t i = 0; i + 1 < bigEnd.size(); i += 2) std::swap(bigEnd[i], bigEnd[i + 1]);
    ways.emplace_back("UTF-16, other end first", bigEnd);
    for (int shift = 0; shift < 3; ++shift) {
        // Whole groups of three bytes, wherever in a longer text they come to stand.
        const QByteArray part = utf8.mid(shift, (utf8.size() - shift) / 3 * 3);
        if (part.size() < 6) continue;  // so few letters stand in any base 64
        for (const auto alphabet : {QByteArray::Base64Encoding, QByteArray::Base64UrlEncoding})
            ways.emplace_back("base 64", part.toBase64(alphabet).toStdString());
    }
    addHashes(ways, utf8);
    addHashes(ways, text.toLower().toUtf8());
    return ways;
}

/// The ways in which some of the words can be read in these bytes.
inline std::vector<std::string> readableIn(const std::string& bytes,
                                           const std::vector<std::string>& words) {
    std::vector<std::string> found;
    for (const std::string& word : words)
        for (const auto& [way, written] : waysToWrite(word))
            if (bytes.find(written) != std::string::npos) found.push_back(word + " as " + way);
    return found;
}

/// The same in every file below a folder, each with its name; names of files are looked at too.
inline std::vector<std::string> readableBelow(const std::string& folder,
                                              const std::vector<std::string>& words) {
    std::vector<std::string> found;
    for (const auto& file : std::filesystem::recursive_directory_iterator(folder)) {
        std::string bytes = file.path().filename().string() + '\n';
        if (file.is_regular_file()) bytes += bytesOfFile(file.path().string());
        for (const std::string& one : readableIn(bytes, words))
            found.push_back(file.path().filename().string() + ": " + one);
    }
    return found;
}

}  // namespace support
