// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "base/result.h"

/// What can be said of a record's file before SQLite is asked, and what is done to it around
/// SQLite.
namespace store {

/// Written in SQLite's header as application_id: "Nbrk".
inline constexpr int applicationId = 0x4e62726b;

/// The file of the record in a data folder: the windows and every command use this one name.
std::string recordFileIn(const std::string& folder);

enum class FileState {
    Missing,   ///< nothing is there, and nothing of an earlier record
    Writable,  ///< ours, as far as its header says
    Readable,  ///< the same, but the file or its folder can't be written
};

/// Looks at the path without changing anything. Errors: StoreNotAFile, StoreNotOurs, StoreCutShort
/// (also for no bytes at all: a record gets its name only when it is complete, so an empty file is
/// a lost one), FileUnreadable.
base::Result<FileState> inspect(const std::string& path);

/// Makes the folder the path lies in when it is missing (0700).
base::Outcome makeFolderOf(const std::string& path);
/// Makes an empty file (0600) in the place of whatever had this name.
base::Outcome makeEmptyFile(const std::string& path);
/// Gives the file its final name so that a power cut leaves it there whole or not at all.
base::Outcome settle(const std::string& from, const std::string& to);
/// Takes from everybody but the owner what they may do.
void keepPrivate(const std::string& path);
/// Removes a file of SQLite with its journals, when they are there.
void removeDatabase(const std::string& path);
/// The names of the files in the folder of a record that earlier states of it are kept in: from
/// before a restore or a newer schema, or left by a restore that was killed.
std::vector<std::string> copiesBeside(const std::string& path);
/// Whether there is a journal that holds something.
bool hasJournal(const std::string& path);

}  // namespace store
